// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.regex.Pattern;
import sillbook.text.Fold;

/** Weeks as growers say them: whole or half. A number without a unit is weeks. */
public final class Weeks {
    private static final double MOST = 520;
    private static final double DAYS = 7;
    private static final Pattern FORM =
            Pattern.compile("(?:(" + Decimal.PATTERN + ")( and a half)?|(half) a) ?(w|wks?|weeks?|d|days?)?");

    private Weeks() {}

    /** {@code 12}, {@code 2wk}, {@code 11.5 weeks}, {@code 11 and a half}, {@code half a week}, {@code 10 days}. */
    public static Heard<Double> parse(String text) {
        return Groups.of(FORM, Fold.of(text).strip())
                .map(Weeks::of)
                .filter(weeks -> weeks <= MOST)
                .map(Heard::as)
                .orElseGet(() -> Heard.not(
                        "weeks, as 12 or 11.5",
                        "'" + text.strip() + "' is no number of weeks. Write it as 12, 11.5 or 2wk."));
    }

    /** The same as days, where a number without a unit is days: {@code 21}, {@code 3wk}, {@code 10.5 days}. */
    public static Heard<Double> parseDays(String text) {
        return Groups.of(FORM, Fold.of(text).strip())
                .map(said -> said.text(4).startsWith("w") ? number(said) * DAYS : number(said))
                .filter(days -> days <= MOST * DAYS)
                .map(Heard::as)
                .orElseGet(() -> Heard.not(
                        "days, as 21 or 3wk",
                        "'" + text.strip() + "' is no number of days. Write it as 21, 21.5 or 3wk."));
    }

    private static double of(Groups said) {
        return said.text(4).startsWith("d") ? ofDays(number(said)) : number(said);
    }

    private static double number(Groups said) {
        double number = said.has(3) ? 0.5 : Decimal.parse(said.text(1)).doubleValue();
        return number + (said.has(2) ? 0.5 : 0);
    }

    public static double ofDays(double days) {
        return days / DAYS;
    }

    /** To the nearest half: {@code 11}, {@code 11 and a half}, {@code half a}. */
    public static String number(double weeks) {
        long halves = Math.round(weeks * 2);
        long whole = halves / 2;
        if (halves % 2 == 0) {
            return Long.toString(whole);
        }
        return whole == 0 ? "half a" : whole + " and a half";
    }

    /** {@code 1 week}, {@code 11 and a half weeks}, {@code half a week}. */
    public static String say(double weeks) {
        long halves = Math.round(weeks * 2);
        return number(weeks) + (halves == 1 || halves == 2 ? " week" : " weeks");
    }

    public static String sayDays(double days) {
        return say(ofDays(days));
    }

    /** A figure's three values: {@code 12, 15, 17 wk}; one alone where they are the same. */
    public static String range(double low, double typical, double high) {
        String only = Decimal.say(typical, 1);
        return low == high ? only + " wk" : Decimal.say(low, 1) + ", " + only + ", " + Decimal.say(high, 1) + " wk";
    }
}
