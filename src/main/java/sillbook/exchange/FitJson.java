// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import sillbook.model.PottingMix.Part;
import sillbook.reckon.fit.Bed;
import sillbook.reckon.fit.Layers;
import sillbook.reckon.fit.Spacing;
import sillbook.words.FitFigures;
import sillbook.words.Inside;
import sillbook.words.MixtureFigures;
import sillbook.words.Provisos;

/** How many bulbs fit a pot, as JSON. */
public final class FitJson {
    private FitJson() {}

    /** The document of {@code sillbook reckon fit --json} for bulbs of one size. */
    public static String write(FitFigures fit, Provisos provisos) {
        Bed.Laid most = fit.most();
        Fields fields = new Fields()
                .number("across", fit.bed().across())
                .number("bulb", fit.bed().bulb())
                .number("count", most.count())
                .number("ratio", fit.bed().ratio())
                .number("ring", fit.bed().ring())
                .places("positions", fit.places())
                .number("airy", fit.count(Spacing.AIRY))
                .number("packed", fit.count(Spacing.PACKED))
                .number("ceiling", fit.count(Spacing.TOUCHING))
                .number("upperBound", most.atMost())
                .flag("proven", most.isProven())
                .object(
                        "suggested",
                        new Fields()
                                .number("count", fit.suggested().count())
                                .code("basis", fit.suggested().basis()))
                .list(
                        "published",
                        fit.published().rows(),
                        row -> new Fields()
                                .number("low", row.low())
                                .number("high", row.high())
                                .text("source", fit.published().source(row)))
                .decimal("apart", fit.apart());
        inside(fields, fit.inside(), fit.bulbs());
        fields.object("below", fit.layers(), FitJson::below);
        return Answer.write(fields, provisos);
    }

    /** The same for bulbs of several sizes. */
    public static String write(MixtureFigures fit, Provisos provisos) {
        Fields fields = new Fields()
                .number("across", fit.mixture().across())
                .flag("fits", fit.places().isPresent())
                .flag("proven", fit.isProven())
                .decimals(
                        "bulbs",
                        fit.mixture().bulbs().stream()
                                .mapToDouble(Double::doubleValue)
                                .toArray())
                .places("positions", fit.places().orElse(List.of()));
        inside(fields, fit.inside(), fit.bulbs());
        return Answer.write(fields, provisos);
    }

    private static void inside(Fields fields, Optional<Inside> inside, double bulbs) {
        fields.decimal("volumeLitres", inside.map(Inside::brim))
                .decimal("mixLitres", inside.map(pot -> pot.litres(bulbs)))
                .decimal("under", inside.flatMap(Inside::under));
        Inside pot = inside.orElse(Inside.UNKNOWN);
        fields.list(
                "parts",
                IntStream.range(0, pot.mix().size()).boxed().toList(),
                i -> part(pot.mix().get(i), pot.parts(bulbs).get(i)));
    }

    private static Fields part(Part part, double litres) {
        return new Fields().text("material", part.material()).number("looseLitres", litres);
    }

    private static Fields below(Layers layers) {
        Layers.Layer lower = layers.lower();
        return new Fields()
                .number("bulb", lower.bed().bulb())
                .number("count", lower.places().size())
                .number("across", lower.bed().across())
                .number("depth", lower.below())
                .number("aside", layers.aside())
                .places("positions", lower.places());
    }
}
