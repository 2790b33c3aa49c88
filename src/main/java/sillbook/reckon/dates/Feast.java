// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import static java.time.DayOfWeek.SUNDAY;
import static java.time.temporal.TemporalAdjusters.dayOfWeekInMonth;
import static java.time.temporal.TemporalAdjusters.next;

import java.time.LocalDate;

/** A feast a wish may name: those that move from year to year, and a few that stay. */
public enum Feast {
    EPIPHANY,
    ORTHODOX_CHRISTMAS,
    CANDLEMAS,
    VALENTINES_DAY,
    WOMENS_DAY,
    ASH_WEDNESDAY,
    /** The fourth Sunday in Lent. */
    MOTHERING_SUNDAY,
    PALM_SUNDAY,
    GOOD_FRIDAY,
    /** Easter Sunday of the Western churches. */
    EASTER,
    ORTHODOX_EASTER,
    /** The second Sunday of May. */
    MOTHERS_DAY,
    WHIT_SUNDAY,
    /** The fourth Sunday before Christmas. */
    ADVENT_SUNDAY,
    CHRISTMAS,
    NEW_YEARS_EVE;

    /**
     * Its day in a year of the Gregorian calendar.
     *
     * @throws IllegalArgumentException when the feast moves with Easter and the year is outside 1583 to 9999
     */
    public LocalDate in(int year) {
        return switch (this) {
            case EPIPHANY -> LocalDate.of(year, 1, 6);
            case ORTHODOX_CHRISTMAS -> LocalDate.of(year, 1, 7);
            case CANDLEMAS -> LocalDate.of(year, 2, 2);
            case VALENTINES_DAY -> LocalDate.of(year, 2, 14);
            case WOMENS_DAY -> LocalDate.of(year, 3, 8);
            case ASH_WEDNESDAY -> Easter.western(year).minusDays(46);
            case MOTHERING_SUNDAY -> Easter.western(year).minusDays(21);
            case PALM_SUNDAY -> Easter.western(year).minusDays(7);
            case GOOD_FRIDAY -> Easter.western(year).minusDays(2);
            case EASTER -> Easter.western(year);
            case ORTHODOX_EASTER -> Easter.orthodox(year);
            case MOTHERS_DAY -> LocalDate.of(year, 5, 1).with(dayOfWeekInMonth(2, SUNDAY));
            case WHIT_SUNDAY -> Easter.western(year).plusDays(49);
            case ADVENT_SUNDAY -> LocalDate.of(year, 11, 26).with(next(SUNDAY));
            case CHRISTMAS -> LocalDate.of(year, 12, 25);
            case NEW_YEARS_EVE -> LocalDate.of(year, 12, 31);
        };
    }

    /** The first time it comes, on that day or after. */
    public LocalDate onOrAfter(LocalDate from) {
        LocalDate thisYear = in(from.getYear());
        return thisYear.isBefore(from) ? in(from.getYear() + 1) : thisYear;
    }
}
