// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

import sillbook.reckon.heat.SineDay;

/**
 * What an hour is worth where the weeks of published schedules are meant, which count a cellar near freezing whole: all from 0 to 9 C, nothing below and
 * from 13 C on, evenly between. The warm end is that of {@link ColdWeight#USUAL}, and as much a judgement of ours.
 */
public enum PublishedCount implements HourWorth {
    HOURS;

    private static final double FADING = ColdWeight.USUAL.fading();
    private static final double GONE = ColdWeight.USUAL.gone();
    private static final double HOURS_IN_DAY = 24;

    private static double at(double celsius) {
        return celsius < 0 ? 0 : Math.max(0, Math.min(1, (GONE - celsius) / (GONE - FADING)));
    }

    @Override
    public double between(double start, double end) {
        return start == end ? at(start) : (sumTo(end) - sumTo(start)) / (end - start);
    }

    /** The worth added up over all temperatures to one. */
    private static double sumTo(double celsius) {
        return Math.max(0, celsius) - (half(celsius - FADING) - half(celsius - GONE)) / (GONE - FADING);
    }

    private static double half(double over) {
        return over > 0 ? over * over / 2 : 0;
    }

    @Override
    public double least(double lowest, double highest) {
        return Math.min(at(lowest), at(highest));
    }

    @Override
    public double most(double lowest, double highest) {
        return highest < 0 ? 0 : at(Math.max(0, lowest));
    }

    @Override
    public double of(SineDay day) {
        return day.hoursAbove(0) - HOURS_IN_DAY * day.degreesBetween(FADING, GONE) / (GONE - FADING);
    }
}
