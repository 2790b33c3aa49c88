// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import sillbook.plan.Ribbon;
import sillbook.reckon.dates.DaySpan;
import sillbook.words.Days;

/** What is in bloom in a planned season, week by week, as text. */
record RibbonLines(Ribbon ribbon) {
    private static final int DAYS_IN_WEEK = 7;
    private static final int TENTHS = 10;
    private static final int MOST = 9;

    /** {@code in bloom from Mon  4 Jan: 0 0 1 2 2 2 1 pots; chance of one, tenths 0 1 4 7 9 9 9}; of weeks that have any. */
    List<String> weeks() {
        List<String> lines = new ArrayList<>();
        LocalDate monday = ribbon.days().start().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        for (LocalDate week = monday; week.isBefore(ribbon.days().endExclusive()); week = week.plusDays(DAYS_IN_WEEK)) {
            if (days(week).stream().anyMatch(day -> ribbon.pots(day) > 0)) {
                lines.add(week(week));
            }
        }
        return lines;
    }

    private static List<LocalDate> days(LocalDate monday) {
        return monday.datesUntil(monday.plusDays(DAYS_IN_WEEK)).toList();
    }

    private String week(LocalDate monday) {
        String pots = days(monday).stream()
                .map(day -> Integer.toString(ribbon.pots(day)))
                .collect(Collectors.joining(" "));
        String chances = days(monday).stream()
                .map(day -> Integer.toString(tenths(ribbon.chance(day))))
                .collect(Collectors.joining(" "));
        return "in bloom from " + Days.column(monday) + ": " + pots + " pots; chance of one, tenths " + chances;
    }

    /** Rounded down, so that nine is said of nothing less. */
    private static int tenths(double chance) {
        return Math.min(MOST, (int) (chance * TENTHS));
    }

    /** {@code no bloom on 17-18 Jan, 22-24 Feb: 5 of the days wished for}; empty where no stretch of days is wished for. */
    Optional<String> gaps() {
        return ribbon.wished().isEmpty() ? Optional.empty() : Optional.of(gapsOfWished());
    }

    private String gapsOfWished() {
        List<DaySpan> gaps = ribbon.gaps();
        String days = gaps.stream().map(Days::span).collect(Collectors.joining(", "));
        return gaps.isEmpty()
                ? "no day wished for is without bloom"
                : "no bloom on " + days + ": " + ribbon.gapDays() + " of the days wished for";
    }
}
