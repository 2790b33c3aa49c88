// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import sillbook.exchange.FitJson;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.model.Settings;
import sillbook.reckon.fit.Bed;
import sillbook.reckon.fit.Filling;
import sillbook.reckon.fit.Frustum;
import sillbook.reckon.fit.Layers;
import sillbook.reckon.fit.Mixture;
import sillbook.reckon.fit.Spacing;
import sillbook.words.FitFigures;
import sillbook.words.Inside;
import sillbook.words.Kinds;
import sillbook.words.MixtureFigures;
import sillbook.words.PerPot;
import sillbook.words.Provisos;
import sillbook.words.Warned;

/** Works out how many bulbs fit a pot and where they sit, without a journal. */
@Command(
        name = "fit",
        description = {
            "Work out how many bulbs fit a pot and where they sit, how much it holds and how much potting mix it takes.",
            "Bare numbers are cm, as 15; 6in is read too. Airy is 1.4 cm apart, packed 0.5, and touching the ceiling."
        })
final class FitCommand implements Callable<Integer> {
    private static final Journal NOTHING = Journal.empty(Settings.initial(ZoneOffset.UTC));

    private final Printer printer;
    private final List<String> assumed = new ArrayList<>();

    @Mixin
    private final PotOptions pot = new PotOptions();

    @Mixin
    private final FitOptions asked = new FitOptions();

    @Mixin
    private final JsonOption json = new JsonOption();

    FitCommand(Printer printer) {
        this.printer = printer;
    }

    @Override
    public Integer call() {
        List<Double> bulbs = asked.bulbs();
        Spacing spacing = asked.spacing(assumed);
        if (asked.isMixture()) {
            mixture(bulbs, spacing);
        } else {
            like(bulbs.get(0), spacing);
        }
        return ExitCode.DONE;
    }

    private void like(double bulb, Spacing spacing) {
        PerPot published = PerPot.of(Handbook.standard(), asked.kind(new Kinds(NOTHING, Handbook.standard())));
        Bed bed = new Bed(checked(across(bulb), bulb), bulb, spacing);
        Optional<Layers> layers = layers(bulb, spacing);
        FitFigures fit = new FitFigures(bed, asked.count(), published, inside(bulb), layers);
        List<Warned> warnings = new ArrayList<>(fit.warnings());
        if (layers.isEmpty() && asked.below().isPresent()) {
            warnings.add(new Warned(
                    "no-second-layer", "The pot is too shallow or too narrow for a second layer. Take a deeper one."));
        }
        Provisos provisos = new Provisos(warnings, assumed);
        new Sight(() -> FitJson.write(fit, provisos), fit::lines, warnings, "").show(json, printer);
    }

    private void mixture(List<Double> bulbs, Spacing spacing) {
        if (asked.count().isPresent() || asked.below().isPresent()) {
            throw new Misused("Several sizes have their numbers, and lie in one layer. Leave out --count and --below.");
        }
        double widest = bulbs.stream().max(Double::compare).orElseThrow();
        Mixture mixture = new Mixture(across(widest), bulbs, spacing);
        MixtureFigures fit = MixtureFigures.of(mixture, inside(widest));
        Provisos provisos = new Provisos(fit.warnings(), assumed);
        new Sight(() -> FitJson.write(fit, provisos), fit::lines, fit.warnings(), "").show(json, printer);
    }

    /** Where the bulbs sit, their tips as far below the rim as the potting mix. */
    private double across(double bulb) {
        return pot.frustum().map(inside -> room(inside, bulb)).orElseGet(pot::across);
    }

    private static double room(Frustum inside, double bulb) {
        double below = Math.min(inside.height(), Filling.BELOW_RIM + bulb / 2);
        double room = inside.room(bulb, below);
        if (!(room > 0)) {
            throw new CouldNot("A bulb of that size does not go into such a pot. Measure both again.");
        }
        return room;
    }

    private static double checked(double across, double bulb) {
        if (across > Bed.WIDEST * bulb) {
            throw new CouldNot("The pot is more than 40 times as wide as a bulb; so many are not counted. Measure both"
                    + " again.");
        }
        return across;
    }

    private Optional<Layers> layers(double bulb, Spacing spacing) {
        return asked.below().flatMap(lower -> {
            Frustum inside = pot.frustum()
                    .orElseThrow(() -> new Misused(
                            "A second layer wants the pot's height. Write --pot 20x15x20, or its --shape."));
            double tips = Layers.under(bulb, Filling.BELOW_RIM);
            checked(Layers.across(inside, lower, tips), lower);
            return Layers.of(inside, lower, bulb, spacing, Filling.BELOW_RIM);
        });
    }

    private Optional<Inside> inside(double bulb) {
        asked.below().ifPresent(lower -> assumed.add("2.5 cm between two layers"));
        Optional<Filling> filling = pot.filling(assumed);
        if (!asked.mix().isEmpty() && filling.isEmpty()) {
            throw new Misused(
                    "How much mix it takes depends on the pot. Write --pot 15x11x14, its --shape or --litres.");
        }
        double lowest =
                asked.below().map(lower -> bulb + Layers.BETWEEN + lower).orElse(bulb);
        Optional<Double> under = pot.frustum().map(inside -> inside.height() - Filling.BELOW_RIM - lowest);
        filling.ifPresent(any -> assumed.add("loose mix that settles by a fifth"));
        return filling.map(full -> new Inside(full, under, asked.mix()));
    }
}
