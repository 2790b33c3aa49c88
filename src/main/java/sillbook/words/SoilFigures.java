// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import sillbook.reckon.soil.FrostChance;
import sillbook.reckon.soil.Ground;
import sillbook.reckon.soil.YearlyWave;

/**
 * How cold it is at a depth over the year, in plain lines.
 *
 * @param surface of the ground, under its mulch if it has one
 * @param depth in m
 * @param limits in C, the lower first
 * @param spellSd how far spells of ten days lie from the wave at that surface, in C
 */
public record SoilFigures(
        YearlyWave air, YearlyWave surface, Ground ground, double depth, List<Double> limits, double spellSd) {
    private static final int ANY_YEAR = 2027;
    private static final double CM = 100;

    public SoilFigures {
        limits = List.copyOf(limits);
    }

    public YearlyWave atDepth() {
        return ground.at(depth, surface);
    }

    /** How many days later than in the air it is coldest there. */
    public double lag() {
        double days = atDepth().coldest() - air.coldest();
        return days < 0 ? days + YearlyWave.YEAR : days;
    }

    /** When it is between the limits there. */
    public List<YearlyWave.Stay> stays() {
        return atDepth().between(limits.get(0), limits.get(1));
    }

    public FrostChance frost() {
        return new FrostChance(surface, ground, spellSd);
    }

    /** The day of the year that a count of days from its beginning falls on. */
    public static MonthDay day(double count) {
        int whole = (int) Math.min(YearlyWave.YEAR - 1, Math.floor(count));
        return MonthDay.from(LocalDate.ofYearDay(ANY_YEAR, whole + 1));
    }

    /** A fact a line. */
    public List<String> lines() {
        YearlyWave there = atDepth();
        List<String> lines = new ArrayList<>();
        lines.add("air: mean " + tenths(air.mean()) + " C, " + tenths(air.minimum()) + " to " + tenths(air.maximum())
                + " C, coldest about " + Days.date(day(air.coldest())));
        lines.add("at " + Decimal.say(depth * CM, 1) + " cm: " + tenths(there.minimum()) + " to "
                + tenths(there.maximum()) + " C, coldest about " + Days.date(day(there.coldest())) + ", "
                + Counts.of(Math.round(lag()), "day") + " later");
        limits.forEach(limit -> lines.add(
                "at or below " + Decimal.say(limit, 1) + " C: " + Counts.of(Math.round(there.daysUpTo(limit)), "day")));
        lines.add("from " + Decimal.say(limits.get(0), 1) + " to " + Decimal.say(limits.get(1), 1) + " C: "
                + staysSaid());
        lines.add("chance that it freezes there in a winter: " + percent(frost().at(depth)));
        lines.add(safe(frost().safeDepth()));
        return lines;
    }

    static String percent(double chance) {
        long percent = Math.round(100 * chance);
        if (percent == 0 || percent == 100) {
            return percent == 0 ? "less than 1 %" : "more than 99 %";
        }
        return percent + " %";
    }

    private static String safe(double depth) {
        if (depth == 0 || Double.isInfinite(depth)) {
            return depth == 0 ? "freezes in one winter of twenty at most, at any depth" : "freezes at any depth";
        }
        return "freezes in one winter of twenty at most from " + Math.round(depth * CM) + " cm down";
    }

    private String staysSaid() {
        List<YearlyWave.Stay> stays = stays();
        if (stays.isEmpty()) {
            return "never";
        }
        return stays.stream()
                .map(stay -> stay.days() >= YearlyWave.YEAR
                        ? "all year"
                        : Days.date(day(stay.from())) + " to " + Days.date(day(stay.to())))
                .collect(Collectors.joining(", "));
    }

    private static String tenths(double celsius) {
        return Decimal.sayFixed(celsius, 1);
    }
}
