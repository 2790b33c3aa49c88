// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import sillbook.exchange.SoilJson;
import sillbook.reckon.soil.FrostChance;
import sillbook.reckon.soil.Ground;
import sillbook.reckon.soil.MonthlyMeans;
import sillbook.reckon.soil.Mulch;
import sillbook.reckon.soil.YearlyWave;
import sillbook.words.Lengths;
import sillbook.words.Provisos;
import sillbook.words.SoilFigures;

/** Foretells how cold it is in the ground over the year, without a journal. */
@Command(
        name = "soil",
        description = {
            "Foretell how cold it is at a depth over the year, from the mean temperatures of twelve months.",
            "Bare numbers are C and cm. It is a rough forecast: a thermometer in the trench beats it."
        })
final class SoilCommand implements Callable<Integer> {
    private static final int MONTHS = 12;
    private static final double CENTIMETRES = 100;
    private static final double USUAL_CONDUCTIVITY = 1;
    private static final List<Double> USUAL_LIMITS = List.of(2.0, 9.0);

    private final Printer printer;
    private final List<String> assumed = new ArrayList<>();

    @Option(
            names = "--monthly",
            paramLabel = "T1,...,T12",
            description = "Means of the months from January on, always wanted.")
    private Optional<String> monthly = Optional.empty();

    @Option(names = "--depth", paramLabel = "D", description = "How deep the pots stand, always wanted.")
    private Optional<String> depth = Optional.empty();

    @Option(
            names = "--diffusivity",
            paramLabel = "A",
            description =
                    "Of the ground, in millionths of m2/s: 0.1 dry clay or wet peat, 0.9 wet sand; 0.5 if not said.")
    private Optional<String> diffusivity = Optional.empty();

    @Option(
            names = "--mulch",
            paramLabel = "T:K",
            description = "How thick, and its conductivity in W/m/K: 10cm:0.1 is fresh snow.")
    private Optional<String> mulch = Optional.empty();

    @Option(
            names = "--soil-conductivity",
            paramLabel = "K",
            description = "Of the ground in W/m/K, wanted for mulch only; 1 if not said.")
    private Optional<String> conductivity = Optional.empty();

    @Option(names = "--limits", paramLabel = "T,T", description = "Between which the pots should be; 2,9 if not said.")
    private Optional<String> limits = Optional.empty();

    @Mixin
    private final JsonOption json = new JsonOption();

    SoilCommand(Printer printer) {
        this.printer = printer;
    }

    @Override
    public Integer call() {
        YearlyWave air = new MonthlyMeans(months()).wave();
        Ground ground = ground();
        double deep = metres(depth.orElseThrow(() -> new Misused("It is not said how deep. Write --depth 15.")));
        List<Double> between = limits();
        SoilFigures soil = mulch.map(text -> under(text, air, ground, deep, between))
                .orElse(new SoilFigures(air, air, ground, deep, between, FrostChance.USUAL_SPELL_SD));
        assumed.add("spells of ten days lie 3 C about the year's wave, one standard deviation");
        Provisos provisos = new Provisos(List.of(), assumed);
        new Sight(() -> SoilJson.write(soil, provisos), soil::lines, List.of(), "").show(json, printer);
        return ExitCode.DONE;
    }

    private List<Double> months() {
        String text = monthly.orElseThrow(
                () -> new Misused("It is not said how warm the months are. Write --monthly and twelve means."));
        List<Double> months = Stream.of(text.split(",", -1)).map(Given::celsius).toList();
        if (months.size() != MONTHS) {
            throw new Misused("'" + text + "' are " + months.size() + " months. Write twelve means, from January on.");
        }
        return months;
    }

    private Ground ground() {
        if (diffusivity.isEmpty()) {
            assumed.add("a diffusivity of 0.5 millionths of m2/s");
        }
        double millionths = diffusivity.map(text -> above(text, "diffusivity")).orElse(Ground.USUAL_DIFFUSIVITY * 1e6);
        return new Ground(millionths / 1e6);
    }

    private SoilFigures under(String text, YearlyWave air, Ground ground, double deep, List<Double> between) {
        String[] said = text.split(":", -1);
        if (said.length != 2) {
            throw new Misused("'" + text + "' is no mulch. Write its thickness and its conductivity, as 10cm:0.1.");
        }
        if (conductivity.isEmpty()) {
            assumed.add("a soil conductivity of 1 W/m/K");
        }
        double ofGround =
                conductivity.map(given -> above(given, "conductivity")).orElse(USUAL_CONDUCTIVITY);
        Mulch layer = new Mulch(metres(said[0]), above(said[1], "conductivity"));
        double spells = FrostChance.USUAL_SPELL_SD * layer.left(ground, ofGround, FrostChance.SPELL);
        return new SoilFigures(air, layer.under(air, ground, ofGround), ground, deep, between, spells);
    }

    private List<Double> limits() {
        String text = limits.orElse("");
        List<Double> given = limits.isEmpty()
                ? USUAL_LIMITS
                : Stream.of(text.split(",", -1)).map(Given::celsius).toList();
        if (given.size() != 2 || given.get(0) >= given.get(1)) {
            throw new Misused("'" + text + "' are not two temperatures, the lower first. Write 2,9.");
        }
        return given;
    }

    private static double above(String text, String what) {
        double number = Given.number(text);
        if (!(number > 0)) {
            throw new Misused("'" + text + "' is no " + what + ". Write a number above 0.");
        }
        return number;
    }

    private static double metres(String text) {
        return Given.read(Lengths.parse(text)).centimetres() / CENTIMETRES;
    }
}
