// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

import sillbook.reckon.heat.SineDay;

/** The count many growers keep: an hour above 0 and up to 9 C is one, any other is none (common practice). */
public enum StrictCount implements HourWorth {
    HOURS;

    /** Up to here an hour counts, in C. */
    static final double MOST = 9;

    static boolean counts(double celsius) {
        return celsius > 0 && celsius <= MOST;
    }

    @Override
    public double between(double start, double end) {
        if (start == end) {
            return counts(start) ? 1 : 0;
        }
        double low = Math.max(0, Math.min(start, end));
        double high = Math.min(MOST, Math.max(start, end));
        return Math.max(0, high - low) / Math.abs(end - start);
    }

    @Override
    public double least(double lowest, double highest) {
        return counts(lowest) && counts(highest) ? 1 : 0;
    }

    @Override
    public double most(double lowest, double highest) {
        return highest > 0 && lowest <= MOST ? 1 : 0;
    }

    @Override
    public double of(SineDay day) {
        return day.hoursAbove(0) - day.hoursAbove(MOST);
    }
}
