// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Locale;

/**
 * One winter, named by its two years.
 *
 * @param year the calendar year its first day lies in
 */
public record Season(int year) implements Comparable<Season> {
    private static final int MONTHS_OF_BUYING = 4;
    private static final MonthDay NEW_YEAR = MonthDay.of(1, 1);

    /** The season a day belongs to when seasons begin on {@code start}. */
    public static Season of(LocalDate day, MonthDay start) {
        return new Season(day.isBefore(start.atYear(day.getYear())) ? day.getYear() - 1 : day.getYear());
    }

    /**
     * The season for which bulbs are chosen on a day: the one under way through its first four months, while they can still
     * be bought and potted, and after that the next (common practice).
     */
    public static Season chosenFor(LocalDate day, MonthDay start) {
        Season now = of(day, start);
        return day.isBefore(now.firstDay(start).plusMonths(MONTHS_OF_BUYING)) ? now : now.next();
    }

    public LocalDate firstDay(MonthDay start) {
        return start.atYear(year);
    }

    public LocalDate endExclusive(MonthDay start) {
        return start.atYear(year + 1);
    }

    public boolean contains(LocalDate day, MonthDay start) {
        return of(day, start).equals(this);
    }

    public boolean isBefore(Season other) {
        return year < other.year;
    }

    public Season next() {
        return new Season(year + 1);
    }

    public Season previous() {
        return new Season(year - 1);
    }

    /** {@code 2026-27}; only {@code 2026} where seasons begin with the calendar year. */
    public String name(MonthDay start) {
        if (start.equals(NEW_YEAR)) {
            return Integer.toString(year);
        }
        return String.format(Locale.ROOT, "%d-%02d", year, Math.floorMod(year + 1, 100));
    }

    @Override
    public int compareTo(Season other) {
        return Integer.compare(year, other.year);
    }
}
