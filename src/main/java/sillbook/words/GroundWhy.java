// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
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
            "The year's swing of the air, through its twelve months, comes to the pots smaller and later, the more so under a cover; "
                    + "cold spells are added for the chance of frost. It is rough, and a thermometer at the pots beats it.";

    private static final double MILLION = 1e6;
    private static final String JUDGED = "? ";
    private static final String TABLE = " (table 2.2)";

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
        lines.add(wave(why.trench().air().fold(new Origins(journal)), ground.air()));
        why.trench().cover().ifPresent(cover -> lines.add(wave("ground, covered", ground.surface())));
        lines.add(wave("pots, bare", ground.bare()));
        why.trench().cover().ifPresent(cover -> lines.add(wave("pots, covered", ground.covered())));
        return lines;
    }

    private Line wave(String what, WinterWave winter) {
        String range = degrees(winter.wave().minimum()) + " to "
                + degrees(winter.wave().maximum());
        return new Line(what, "coldest about " + Days.date(winter.coldestDay()), range);
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
        return Stream.of(Stream.of(soil(trench)), cover, Stream.of(spells(trench, settings)))
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
        return soil.isPublished() ? "▫ " + says + TABLE : JUDGED + says + " (judged)";
    }

    private static String spells(Trench trench, Settings settings) {
        return trench.spells()
                .map(own -> "▪ spells of " + GroundWords.spread(own, settings.temperatures()) + " (your own)")
                .orElseGet(() -> JUDGED + "spells of "
                        + GroundWords.spread(FrostChance.USUAL_SPELL_SD, settings.temperatures())
                        + " (judged, away from the sea)");
    }

    private static String cover(Trench.Cover cover) {
        CoverHeat heat = CoverHeat.of(cover);
        String conducts =
                GroundTerms.COVERS.say(cover.material()) + ": " + Decimal.say(heat.conductivity(), 3) + " W/m/K";
        return switch (heat.basis()) {
            case PUBLISHED -> "▫ fresh " + conducts + TABLE;
            case ASSUMED -> JUDGED + conducts + " (judged, as it lies moist)";
            case OWN -> "▪ " + conducts + " (your own)";
        };
    }

    /** Where the air is known from. */
    private record Origins(Journal journal) implements Trench.Air.Cases<String> {
        @Override
        public String means(Trench.Means air) {
            return "air, by its months";
        }

        @Override
        public String read(Trench.Read air) {
            return "air at the " + journal.places().get(air.outdoors()).name();
        }
    }
}
