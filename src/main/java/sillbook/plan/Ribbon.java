// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import sillbook.reckon.dates.Dates;
import sillbook.reckon.dates.DaySpan;

/**
 * What is in bloom on each day of a season.
 *
 * @param days of the season
 * @param pots likely in bloom, for each day
 * @param chances that at least one is in bloom, 0 to 1, for each day
 * @param wished the days on which something should be in bloom, in order
 */
public record Ribbon(DaySpan days, List<Integer> pots, List<Double> chances, List<DaySpan> wished) {
    public Ribbon {
        pots = List.copyOf(pots);
        chances = List.copyOf(chances);
        wished = List.copyOf(wished);
    }

    static Ribbon of(List<PlannedPot> planned, DaySpan days, List<DaySpan> wished) {
        List<Integer> pots = days.start()
                .datesUntil(days.endExclusive())
                .map(day -> (int) planned.stream()
                        .filter(pot -> pot.inFlower().contains(day))
                        .count())
                .toList();
        return new Ribbon(days, pots, new BloomChances(planned, days).covering(), wished);
    }

    public int pots(LocalDate day) {
        return days.contains(day) ? pots.get(Dates.between(days.start(), day)) : 0;
    }

    public double chance(LocalDate day) {
        return days.contains(day) ? chances.get(Dates.between(days.start(), day)) : 0;
    }

    public boolean isWished(LocalDate day) {
        return wished.stream().anyMatch(span -> span.contains(day));
    }

    /** The wished days without anything in bloom, as spans in order. */
    public List<DaySpan> gaps() {
        List<DaySpan> gaps = new ArrayList<>();
        wished.forEach(span -> span.start()
                .datesUntil(span.endExclusive())
                .filter(day -> pots(day) == 0)
                .forEach(day -> gaps.add(DaySpan.ofInclusive(day, day))));
        return DaySpan.joined(gaps);
    }

    public int gapDays() {
        return (int) gaps().stream().mapToLong(DaySpan::days).sum();
    }

    public int longestGap() {
        return (int) gaps().stream().mapToLong(DaySpan::days).max().orElse(0);
    }

    public int mostAtOnce() {
        return pots.stream().mapToInt(count -> count).max().orElse(0);
    }
}
