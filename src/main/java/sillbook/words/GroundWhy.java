// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Journal;
import sillbook.model.Settings;
import sillbook.model.Settings.LengthUnit;
import sillbook.model.Temperature;
import sillbook.model.Trench;
import sillbook.reckon.soil.FrostChance;
import sillbook.season.CoverHeat;
import sillbook.season.GroundForetold;
import sillbook.season.SoilHeat;
import sillbook.season.WhyGround;
import sillbook.season.WinterWave;
import sillbook.words.Explanation.Line;

/** Why the ground is foretold to be so cold: the wave of the air, what is left of it at the pots, and the spells. */
record GroundWhy(Journal journal) {
    static final String RULE =
            "The year's swing of the air, drawn through its twelve months, comes to the pots smaller and later: held back by "
                    + "the cover, dying away with depth. Cold spells of ten days are added for the chance of frost. It is a rough forecast: air is not soil, "
                    + "moist soil freezes later, and the cover is reckoned as if it lay all year. A thermometer at the pots beats it.";

    private static final double MILLION = 1e6;
    private static final String JUDGED = "? ";
    private static final String TABLE = " (Moene and van Dam, table 2.2)";

    static String title(GroundForetold ground) {
        return "the ground foretold, chance of frost " + SoilFigures.percent(ground.chance());
    }

    static String total(GroundForetold ground, LengthUnit unit) {
        return SoilFigures.percent(ground.chance()) + "; "
                + GroundAheadWords.safe(ground, unit).replace("Safe", "safe").replace(".", "");
    }

    List<Line> sum(WhyGround why) {
        GroundForetold ground = why.result();
        List<Line> lines = new ArrayList<>();
        lines.add(wave("air", why.trench().air().fold(new Origins(journal)), ground.air()));
        why.trench()
                .cover()
                .ifPresent(cover -> lines.add(wave(
                        "surface",
                        "under " + Covers.say(cover, journal.settings().lengths()),
                        ground.surface())));
        lines.add(wave("pots", "bare", ground.bare()));
        if (why.trench().cover().isPresent()) {
            lines.add(wave("pots", "covered", ground.covered()));
        }
        lines.add(new Line(
                "spells",
                "ten days about the wave, one deviation",
                GroundWords.spread(ground.spells(), journal.settings().temperatures())));
        return lines;
    }

    private Line wave(String what, String how, WinterWave winter) {
        String range = degrees(winter.wave().minimum()) + " to "
                + degrees(winter.wave().maximum());
        return new Line(what, how + ", coldest about " + Days.date(winter.coldestDay()), range);
    }

    private String degrees(double celsius) {
        return Temperatures.number(
                Temperature.ofCelsius(celsius), journal.settings().temperatures());
    }

    /** The figures that went in, marked as published, judged or the grower's own. */
    List<String> figures(WhyGround why) {
        return figures(why.trench(), journal.settings()).toList();
    }

    private static Stream<String> figures(Trench trench, Settings settings) {
        Stream<String> cover = trench.cover().stream().map(GroundWhy::cover);
        return Stream.of(Stream.of(soil(trench)), cover, spells(trench, settings).stream())
                .flatMap(lines -> lines);
    }

    /** Those of them that are judgements of ours. */
    static List<String> judged(Trench trench, Settings settings) {
        return figures(trench, settings)
                .filter(line -> line.startsWith(JUDGED))
                .map(line -> line.substring(JUDGED.length()))
                .toList();
    }

    private static String soil(Trench trench) {
        SoilHeat soil = SoilHeat.of(trench.soil());
        String says = GroundTerms.SOILS.say(trench.soil()) + ": " + Decimal.say(soil.diffusivity() * MILLION, 2)
                + " millionths of m2/s, " + Decimal.say(soil.conductivity(), 2) + " W/m/K";
        return soil.isPublished() ? "▫ " + says + TABLE : JUDGED + says + " (a judgement, between sand and clay)";
    }

    private static Optional<String> spells(Trench trench, Settings settings) {
        return trench.spells().isPresent()
                ? Optional.empty()
                : Optional.of(JUDGED + "spells of "
                        + GroundWords.spread(FrostChance.USUAL_SPELL_SD, settings.temperatures())
                        + " (a judgement, for winters away from the sea)");
    }

    private static String cover(Trench.Cover cover) {
        CoverHeat heat = CoverHeat.of(cover);
        String conducts =
                GroundTerms.COVERS.say(cover.material()) + ": " + Decimal.say(heat.conductivity(), 3) + " W/m/K";
        return switch (heat.basis()) {
            case PUBLISHED -> "▫ fresh " + conducts + TABLE;
            case ASSUMED -> JUDGED + conducts + " (a judgement, as it lies moist in winter)";
            case OWN -> "▪ " + conducts + " (your own)";
        };
    }

    /** Where the air is known from. */
    private record Origins(Journal journal) implements Trench.Air.Cases<String> {
        @Override
        public String means(Trench.Means air) {
            return "through your twelve months";
        }

        @Override
        public String read(Trench.Read air) {
            return "as read at the " + journal.places().get(air.outdoors()).name();
        }
    }
}
