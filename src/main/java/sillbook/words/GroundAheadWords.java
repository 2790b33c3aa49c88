// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Length;
import sillbook.model.Settings;
import sillbook.model.Settings.LengthUnit;
import sillbook.model.Temperature;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.GroundForetold;

/** What is foretold of the ground in which pots stand buried. */
public record GroundAheadWords(Settings settings) {
    /** Where the air of a year is not read yet. */
    public static final String NOT_YET =
            "Not foretold yet: its air has to be read for twenty days of every month of a year.";

    private static final double CM = 100;
    private static final long WHOLE_YEAR = 365;

    /** A sentence or two a line: when to dig and to bring the pots, when they are cold as they should be, the frost. */
    public List<String> say(GroundForetold ground) {
        return Stream.of(dig(ground), inBand(ground), coldest(ground), lifting(ground), chance(ground))
                .toList();
    }

    /** {@code Dig before 3 Dec, when bare ground freezes. Pots in about 12 Nov, when it is down to 7 C there.} */
    public String dig(GroundForetold ground) {
        String dig = ground.digBefore()
                .map(day -> "Dig before " + Days.date(day) + ", when bare ground freezes. ")
                .orElse("The ground never freezes for long: it can be dug all winter. ");
        return dig
                + ground.potsIn()
                        .map(day -> "Pots in about " + Days.date(day) + ", when it is down to "
                                + degrees(GroundForetold.POTS_IN) + " at their depth.")
                        .orElse("It never gets down to " + degrees(GroundForetold.POTS_IN) + " at the pots.");
    }

    private String inBand(GroundForetold ground) {
        String when = ground.inBand().stream()
                .map(days -> days.days() >= WHOLE_YEAR ? "all year" : span(days))
                .collect(Collectors.joining(" and "));
        return "At " + Temperatures.fromTo(ground.band(), settings.temperatures()) + " there: "
                + (when.isEmpty() ? "never" : when) + ".";
    }

    private String coldest(GroundForetold ground) {
        String lowest = "Coldest there about " + Days.date(ground.covered().coldestDay()) + ", "
                + degrees(ground.covered().wave().minimum());
        return lowest
                + ground.frozen()
                        .map(days -> ". Frozen at the pots " + span(days) + ".")
                        .orElse(": in a usual winter it does not freeze at the pots.");
    }

    private String lifting(GroundForetold ground) {
        String under = ground.trench().cover().isPresent() ? " under its cover" : "";
        return ground.shut()
                .map(days -> "Frozen shut" + under + " " + span(days) + ": lift before, or cover it thicker.")
                .orElse("It stays open all winter" + under + ": each pot can be lifted on its day.");
    }

    private String chance(GroundForetold ground) {
        String other = ground.trench().cover().isPresent()
                ? "bare "
                : "under " + Covers.say(GroundForetold.STRAW, settings.lengths()) + " ";
        return "Chance of frost at the pots, cold spells counted in: " + SoilFigures.percent(ground.chance()) + " (?), "
                + other + SoilFigures.percent(ground.otherwise()) + ". " + safe(ground, settings.lengths());
    }

    /** {@code Safe from 40 cm down}: freezing in one winter of twenty at most. */
    static String safe(GroundForetold ground, LengthUnit unit) {
        double depth = ground.safeDepth();
        if (depth == 0 || Double.isInfinite(depth)) {
            return depth == 0 ? "Safe at any depth." : "Safe at no depth.";
        }
        return "Safe from " + Lengths.say(Length.ofCentimetres(Math.ceil(depth * CM)), unit) + " down.";
    }

    private String degrees(double celsius) {
        return Temperatures.say(Temperature.ofCelsius(celsius), settings.temperatures());
    }

    private static String span(DaySpan days) {
        return Days.fromTo(days.start(), days.last());
    }
}
