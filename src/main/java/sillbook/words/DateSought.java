// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import sillbook.model.Day;

/**
 * A day of a month whose year is to be found.
 *
 * @param dayOfWeek what was said with it, to be held against it
 */
record DateSought(int dayOfMonth, Month month, Optional<DayOfWeek> dayOfWeek, DayReader reader) {
    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2199;

    /**
     * Days in the other direction that are still taken as said: on 12 Jan a fact of "14 Jan" means this year's, which has yet to
     * come, rather than last year's.
     */
    private static final int LEEWAY = 31;

    DateSought(int dayOfMonth, Month month, DayReader reader) {
        this(dayOfMonth, month, Optional.empty(), reader);
    }

    /** In a year as it was written; in the nearest that fits when it was not. */
    Heard<Day> in(String year) {
        return year.isEmpty() ? nearest() : in(Integer.parseInt(year));
    }

    private Heard<Day> in(int year) {
        if (year < FIRST_YEAR || year > LAST_YEAR) {
            return Heard.not(
                    FIRST_YEAR + " to " + LAST_YEAR,
                    "The year " + year + " is out of reach. Write one from " + FIRST_YEAR + " to " + LAST_YEAR + ".");
        }
        if (!isInMonth(year)) {
            return notInMonth(year);
        }
        LocalDate day = LocalDate.of(year, month, dayOfMonth);
        return fits(day) ? Heard.as(Day.on(day)) : wrongDayOfWeek(day);
    }

    private Heard<Day> nearest() {
        List<LocalDate> days = years().filter(this::isInMonth)
                .mapToObj(year -> LocalDate.of(year, month, dayOfMonth))
                .toList();
        return days.stream()
                .filter(this::fits)
                .findFirst()
                .map(day -> Heard.as(Day.on(day)))
                .orElseGet(() -> days.isEmpty() ? notInMonth(likelyYear()) : wrongDayOfWeek(days.get(0)));
    }

    /** The years to try, the likeliest first; a day of the week may lead to the less likely ones. */
    private IntStream years() {
        int likely = likelyYear();
        int step = reader.looking() == Looking.BACK ? -1 : 1;
        return IntStream.of(likely, likely + step, likely - step);
    }

    private int likelyYear() {
        return yearOf(month.getValue() * 31 + dayOfMonth, reader);
    }

    private boolean isInMonth(int year) {
        return dayOfMonth >= 1 && dayOfMonth <= YearMonth.of(year, month).lengthOfMonth();
    }

    private boolean fits(LocalDate day) {
        return dayOfWeek.isEmpty() || dayOfWeek.get() == day.getDayOfWeek();
    }

    /** The year in which something lies, given the order of its day in a year of 31-day months. */
    private static int yearOf(int orderInYear, DayReader reader) {
        LocalDate edge = reader.looking() == Looking.BACK
                ? reader.today().plusDays(LEEWAY)
                : reader.today().minusDays(LEEWAY);
        int orderOfEdge = edge.getMonthValue() * 31 + edge.getDayOfMonth();
        if (reader.looking() == Looking.BACK) {
            return orderInYear > orderOfEdge ? edge.getYear() - 1 : edge.getYear();
        }
        return orderInYear < orderOfEdge ? edge.getYear() + 1 : edge.getYear();
    }

    /** The month meant when no year was written. */
    static YearMonth month(Month month, DayReader reader) {
        int order = month.getValue() * 31 + (reader.looking() == Looking.BACK ? 1 : 31);
        return YearMonth.of(yearOf(order, reader), month);
    }

    private Heard<Day> notInMonth(int year) {
        int length = YearMonth.of(year, month).lengthOfMonth();
        String which = Calendar.name(month) + (month == Month.FEBRUARY ? " " + year : "");
        String brief = which + " has " + length + " days";
        String typed = " " + Calendar.typed(month);
        return Heard.not(
                brief,
                dayOfMonth + typed + " is no day: " + brief + ". Write another, as " + length + typed + " or +10.");
    }

    private Heard<Day> wrongDayOfWeek(LocalDate day) {
        String is = Days.date(day) + " " + day.getYear() + " is a " + Calendar.name(day.getDayOfWeek());
        String said = dayOfWeek.map(Calendar::name).orElse("");
        return Heard.not(is, is + ", not a " + said + ". Write the date alone, or the day of the week alone.");
    }
}
