// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.function.Function;
import sillbook.model.Day;
import sillbook.reckon.dates.DaySpan;

/** Days as they are said. */
public final class Days {
    private Days() {}

    /** {@code Tue 12 Jan}. */
    public static String day(LocalDate day) {
        return Calendar.shortName(day.getDayOfWeek()) + " " + date(day);
    }

    /** {@code Tue 12 Jan 2027}. */
    public static String full(LocalDate day) {
        return day(day) + " " + day.getYear();
    }

    /** {@code Tue 12 Jan}; a day that is not among those spoken of has its year. */
    public static String day(LocalDate day, DaySpan spokenOf) {
        return spokenOf.contains(day) ? day(day) : full(day);
    }

    /** {@code Tuesday 12 January 2027}, for reading aloud. */
    public static String aloud(LocalDate day) {
        return Calendar.name(day.getDayOfWeek()) + " " + day.getDayOfMonth() + " " + Calendar.name(day.getMonth()) + " "
                + day.getYear();
    }

    /** {@code Sat  2 Jan}: always ten columns, to stand under each other. */
    public static String column(LocalDate day) {
        String gap = day.getDayOfMonth() < 10 ? "  " : " ";
        return Calendar.shortName(day.getDayOfWeek()) + gap + date(day);
    }

    /** The same; a day that is not among those spoken of is {@code 2 Jan 2028}, which may take eleven. */
    public static String column(LocalDate day, DaySpan spokenOf) {
        return spokenOf.contains(day) ? column(day) : date(day, spokenOf);
    }

    /** {@code Tue}. */
    public static String weekday(LocalDate day) {
        return Calendar.shortName(day.getDayOfWeek());
    }

    /** {@code 12 Jan}. */
    public static String date(LocalDate day) {
        return date(MonthDay.from(day));
    }

    /** {@code 12 Jan}; a day that is not among those spoken of has its year. */
    public static String date(LocalDate day, DaySpan spokenOf) {
        return date(day) + (spokenOf.contains(day) ? "" : " " + day.getYear());
    }

    /** {@code 15 Oct}. */
    public static String date(MonthDay day) {
        return day.getDayOfMonth() + " " + Calendar.shortName(day.getMonth());
    }

    /** A day that may be uncertain: {@code Tue 12 Jan 2027}, {@code about 5 Feb 2027}, {@code early Feb 2027}. */
    public static String full(Day day) {
        return day.isExact()
                ? full(day.likely())
                : roughly(day) + " " + day.likely().getYear();
    }

    /** The same without its year: {@code Tue 12 Jan}, {@code about 5 Feb}. */
    public static String day(Day day) {
        return day.isExact() ? day(day.likely()) : roughly(day);
    }

    private static String roughly(Day day) {
        return Rough.of(day)
                .map(rough ->
                        rough.word() + " " + Calendar.shortName(day.likely().getMonth()))
                .orElseGet(() -> "about " + date(day.likely()));
    }

    /** Days in a row, both ends in it: {@code 2-11 Jan}, {@code 12 Jan-7 Feb}; one day alone is {@code 12 Jan}. */
    public static String span(LocalDate from, LocalDate to) {
        return joined(from, to, "-");
    }

    /** The same of a span. */
    public static String span(DaySpan days) {
        return span(days.start(), days.last());
    }

    /** A day, and the last where that is another: {@code 22 Nov, last on 26 Nov}. */
    static String andLast(LocalDate day, LocalDate last, Function<LocalDate, String> said) {
        return said.apply(day) + (day.equals(last) ? "" : ", last on " + said.apply(last));
    }

    /** The same in a sentence: {@code 2 to 11 Jan}, {@code 26 Jan to 7 Feb}. */
    public static String fromTo(LocalDate from, LocalDate to) {
        return joined(from, to, " to ");
    }

    /** The same with the years where the two ends are not of one: {@code 26 Jan to 7 Feb}, {@code 8 Oct 2026 to 12 Jan 2027}. */
    public static String fromToOfYears(LocalDate from, LocalDate to) {
        return from.getYear() == to.getYear() ? fromTo(from, to) : withYears(from, to, " to ");
    }

    private static String withYears(LocalDate from, LocalDate to, String between) {
        return date(from) + " " + from.getYear() + between + date(to) + " " + to.getYear();
    }

    private static String joined(LocalDate from, LocalDate to, String between) {
        if (from.equals(to)) {
            return date(from);
        }
        if (from.getYear() != to.getYear() && !to.isBefore(from.plusYears(1))) {
            return withYears(from, to, between);
        }
        boolean oneMonth = from.getMonth() == to.getMonth() && from.getYear() == to.getYear();
        return (oneMonth ? Integer.toString(from.getDayOfMonth()) : date(from)) + between + date(to);
    }

    /** How far it is: {@code today}, {@code tomorrow}, {@code in 3 days}, {@code yesterday}, {@code 90 days ago}. */
    public static String away(LocalDate day, LocalDate today) {
        long days = ChronoUnit.DAYS.between(today, day);
        if (days == 0) {
            return "today";
        }
        if (days > 0) {
            return days == 1 ? "tomorrow" : "in " + days + " days";
        }
        return days == -1 ? "yesterday" : -days + " days ago";
    }
}
