// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

import sillbook.reckon.heat.SineDay;

/**
 * What an hour at a temperature is worth, 0 to 1: nothing up to a first point, all between the two in the middle, nothing from the last on, and evenly between.
 *
 * @param none in C, like the others; each at least the one before, and the first and the last two apart
 */
public record ColdWeight(double none, double full, double fading, double gone) implements HourWorth {
    /** The ends are a judgement of ours; what it rests on is told of the package. */
    public static final ColdWeight USUAL = new ColdWeight(0, 2, 9, 13);

    private static final double LEVEL = 1e-9;
    private static final double HOURS_IN_DAY = 24;

    public ColdWeight {
        if (!(none < full && full <= fading && fading < gone)) {
            throw new IllegalArgumentException("cold from " + none + ", " + full + ", " + fading + ", " + gone);
        }
    }

    /** Of an hour at a temperature. */
    public double at(double celsius) {
        double rise = (celsius - none) / (full - none);
        double fall = (gone - celsius) / (gone - fading);
        return Math.max(0, Math.min(1, Math.min(rise, fall)));
    }

    @Override
    public double between(double start, double end) {
        return Math.abs(end - start) < LEVEL ? at(start) : (sumTo(end) - sumTo(start)) / (end - start);
    }

    @Override
    public double least(double lowest, double highest) {
        return Math.min(at(lowest), at(highest));
    }

    @Override
    public double most(double lowest, double highest) {
        return at(Math.max(lowest, Math.min(full, highest)));
    }

    @Override
    public double of(SineDay day) {
        return HOURS_IN_DAY
                * (day.degreesBetween(none, full) / (full - none) - day.degreesBetween(fading, gone) / (gone - fading));
    }

    /** The weight added up over all temperatures to one. */
    double sumTo(double celsius) {
        return (half(celsius - none) - half(celsius - full)) / (full - none)
                - (half(celsius - fading) - half(celsius - gone)) / (gone - fading);
    }

    private static double half(double over) {
        return over > 0 ? over * over / 2 : 0;
    }
}
