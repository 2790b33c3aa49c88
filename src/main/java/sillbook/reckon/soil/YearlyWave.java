// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.soil;

import java.util.ArrayList;
import java.util.List;

/**
 * A temperature that swings once a year as a cosine. At the ends where it only touches a bound, it counts as on it.
 *
 * @param mean in C
 * @param amplitude half from the lowest to the highest, not below 0
 * @param coldest the day of the lowest, from 0 at the beginning of the year up to {@link #YEAR}
 */
public record YearlyWave(double mean, double amplitude, double coldest) {
    /** Its length in days. */
    public static final double YEAR = 365;

    public YearlyWave {
        if (!(amplitude >= 0)) {
            throw new IllegalArgumentException("an amplitude of " + amplitude);
        }
        coldest = inYear(coldest);
    }

    /**
     * A stretch of days.
     *
     * @param from the day of the year it begins, with its fraction
     * @param days how long it is, the whole year at most
     */
    public record Stay(double from, double days) {
        /** The day of the year it ends; before its beginning where it runs past the end of the year. */
        public double to() {
            return inYear(from + days);
        }
    }

    public double minimum() {
        return mean - amplitude;
    }

    public double maximum() {
        return mean + amplitude;
    }

    /** On a day, which may be told with its fraction. */
    public double on(double day) {
        return mean - amplitude * Math.cos(2 * Math.PI * (day - coldest) / YEAR);
    }

    /** How many days of the year it is so cold, or colder. */
    public double daysUpTo(double celsius) {
        if (celsius >= maximum()) {
            return YEAR;
        }
        return celsius < minimum() ? 0 : YEAR * Math.acos((mean - celsius) / amplitude) / Math.PI;
    }

    /** When it is between two temperatures: the whole year, once, twice or never. */
    public List<Stay> between(double low, double high) {
        double outer = daysUpTo(high) / 2;
        double inner = daysUpTo(low) / 2;
        List<Stay> stays = new ArrayList<>();
        if (outer <= inner) {
            return stays;
        }
        if (inner == 0) {
            stays.add(stay(-outer, outer));
        } else {
            stays.add(stay(-outer, -inner));
            stays.add(stay(inner, outer));
        }
        return stays;
    }

    private Stay stay(double from, double to) {
        return new Stay(inYear(coldest + from), to - from);
    }

    /** The same wave smaller and later. */
    YearlyWave damped(double factor, double daysLater) {
        return new YearlyWave(mean, amplitude * factor, coldest + daysLater);
    }

    static double inYear(double day) {
        return day - YEAR * Math.floor(day / YEAR);
    }
}
