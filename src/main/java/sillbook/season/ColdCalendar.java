// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Optional;
import sillbook.model.Place.ColdDays;
import sillbook.reckon.dates.DaySpan;

/** The days of the year on which a place is cold, laid over real years. */
record ColdCalendar(ColdDays days) {
    private static final int MARCH = 3;

    /** How many days of the span are cold. */
    int coldDaysIn(DaySpan span) {
        if (days.isAllYear()) {
            return (int) span.days();
        }
        long cold = 0;
        for (int year = span.start().getYear() - 1; year <= span.endExclusive().getYear(); year++) {
            cold += span.intersection(coldFrom(year)).map(DaySpan::days).orElse(0L);
        }
        return (int) cold;
    }

    /** The first cold day on that day or after. */
    LocalDate coldOnOrAfter(LocalDate day) {
        if (days.contains(day)) {
            return day;
        }
        LocalDate thisYear = in(days.from(), day.getYear());
        return thisYear.isBefore(day) ? in(days.from(), day.getYear() + 1) : thisYear;
    }

    /** The first day after that one, itself cold, on which it is no longer cold; empty where it is cold all year. */
    Optional<LocalDate> warmAfter(LocalDate coldDay) {
        if (days.isAllYear()) {
            return Optional.empty();
        }
        LocalDate thisYear = in(days.untilExclusive(), coldDay.getYear());
        return Optional.of(thisYear.isAfter(coldDay) ? thisYear : in(days.untilExclusive(), coldDay.getYear() + 1));
    }

    /** The day on which the cold was over that came before that day, itself not cold. */
    LocalDate coldEndedBefore(LocalDate warmDay) {
        LocalDate thisYear = in(days.untilExclusive(), warmDay.getYear());
        return thisYear.isAfter(warmDay) ? in(days.untilExclusive(), warmDay.getYear() - 1) : thisYear;
    }

    /** The cold days that begin in a year. */
    private DaySpan coldFrom(int year) {
        boolean overNewYear = days.untilExclusive().isBefore(days.from());
        return DaySpan.of(in(days.from(), year), in(days.untilExclusive(), overNewYear ? year + 1 : year));
    }

    /** That day in a year; 29 February comes to 1 March where there is none. */
    private static LocalDate in(MonthDay day, int year) {
        return day.isValidYear(year) ? day.atYear(year) : LocalDate.of(year, MARCH, 1);
    }
}
