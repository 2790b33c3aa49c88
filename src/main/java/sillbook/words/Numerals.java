// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.Month;
import java.util.Locale;
import sillbook.model.Day;

/** Days written in figures only. Which figure is the month is asked, never guessed. */
final class Numerals {
    private static final int MONTHS = 12;

    private Numerals() {}

    /** Year, month, day: the order is fixed (ISO 8601). */
    static Heard<Day> iso(Groups said, DayReader reader) {
        int month = said.number(2);
        return isMonth(month)
                ? new DateSought(said.number(3), Month.of(month), reader).in(said.text(1))
                : noMonth(said.text(2));
    }

    /** Two figures, of which one must be over twelve or both the same. */
    static Heard<Day> read(int one, int other, String year, DayReader reader) {
        if (one != other && isMonth(one) && isMonth(other)) {
            return whichMonth(one, other);
        }
        int month = isMonth(other) ? other : one;
        int day = isMonth(other) ? one : other;
        return isMonth(month)
                ? new DateSought(day, Month.of(month), reader).in(year)
                : noMonth(Integer.toString(month));
    }

    private static boolean isMonth(int figure) {
        return figure >= 1 && figure <= MONTHS;
    }

    private static Heard<Day> whichMonth(int one, int other) {
        String dayFirst = one + " " + Calendar.shortName(Month.of(other));
        String monthFirst = other + " " + Calendar.shortName(Month.of(one));
        return Heard.not(
                dayFirst + " or " + monthFirst + "?",
                "That may be " + dayFirst + " or " + monthFirst + ". Write the month as a word, as "
                        + dayFirst.toLowerCase(Locale.ROOT) + ".");
    }

    private static Heard<Day> noMonth(String figure) {
        return Heard.not(
                "a year has " + MONTHS + " months",
                figure + " is no month: a year has " + MONTHS + ". Write the month as a word, as 14 nov.");
    }
}
