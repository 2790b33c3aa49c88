// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import sillbook.reckon.dates.Dates;
import sillbook.reckon.dates.DaySpan;

/** On which days a place is there, and cold, with the sums that are asked of many stretches of days. */
final class ColdTable {
    /** Before a season's first day: more than any bulb stands in the cold. */
    private static final int DAYS_BEFORE = 400;

    private final Berth berth;
    private final LocalDate first;
    private final int[] coldBefore;
    private final int[] missingBefore;

    ColdTable(Berth berth, DaySpan season) {
        this.berth = berth;
        this.first = season.start().minusDays(DAYS_BEFORE);
        int days = Dates.between(first, season.endExclusive());
        this.coldBefore = new int[days + 1];
        this.missingBefore = new int[days + 1];
        for (int day = 0; day < days; day++) {
            LocalDate date = first.plusDays(day);
            coldBefore[day + 1] = coldBefore[day] + (berth.isCold(date) ? 1 : 0);
            missingBefore[day + 1] = missingBefore[day] + (berth.isThere(date) ? 0 : 1);
        }
    }

    Berth berth() {
        return berth;
    }

    private int number(LocalDate day) {
        return Math.max(0, Math.min(coldBefore.length - 1, Dates.between(first, day)));
    }

    /** Days of cold from a day up to another. */
    int cold(LocalDate from, LocalDate to) {
        return coldBefore[number(to)] - coldBefore[number(from)];
    }

    /** Whether the place is there on all days from a day up to another. */
    boolean isThere(LocalDate from, LocalDate to) {
        return missingBefore[number(to)] == missingBefore[number(from)];
    }

    /** The last day from which up to another there are so many days of cold; the first day of all where there never are. */
    LocalDate since(int days, LocalDate to) {
        int day = number(to);
        int wanted = coldBefore[day] - days;
        while (day > 0 && coldBefore[day] > wanted) {
            day--;
        }
        return first.plusDays(day);
    }

    /** Whether it stays cold up to a day, once it is from another on. */
    boolean isWhole(LocalDate from, LocalDate to) {
        int day = number(from);
        int end = number(to);
        while (day < end && coldBefore[day + 1] == coldBefore[day]) {
            day++;
        }
        return coldBefore[end] - coldBefore[day] == end - day;
    }
}
