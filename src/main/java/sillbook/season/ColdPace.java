// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.List;

/**
 * How much of a day counts as cold at a place, 0 to 1, as it has lately been; its days to come are taken to be like that.
 *
 * @param slow the mean less the spread of single days
 * @param likely the mean
 * @param fast the mean with the spread
 * @param days it was read on; 0 where the calendar is taken for granted
 */
public record ColdPace(double slow, double likely, double fast, int days) {
    /** Days that are as long as it takes to tell how a place has lately been. */
    static final int LATELY_DAYS = 14;

    /** As by the calendar: a cold day counts whole. */
    public static final ColdPace CALENDAR = new ColdPace(1, 1, 1, 0);

    /** Nothing is foretold of a place that gives less, but that it takes so long (judgement). */
    private static final double LEAST = 0.25;

    static ColdPace of(List<Double> worths) {
        if (worths.isEmpty()) {
            return CALENDAR;
        }
        double mean = mean(worths);
        double squares = 0;
        for (double worth : worths) {
            squares += (worth - mean) * (worth - mean);
        }
        double spread = Math.sqrt(squares / worths.size());
        return new ColdPace(bounded(mean - spread), bounded(mean), bounded(mean + spread), worths.size());
    }

    private static double mean(List<Double> of) {
        double sum = 0;
        for (double each : of) {
            sum += each;
        }
        return sum / of.size();
    }

    private static double bounded(double worth) {
        return Math.max(LEAST, Math.min(1, worth));
    }

    public boolean isRead() {
        return days > 0;
    }

    /** Whether it was read, and is cold there. */
    boolean isReadCold() {
        return isRead() && isCold();
    }

    /** Whether it is cold there: a day counts half or more. */
    boolean isCold() {
        return likely >= StretchReading.COLD;
    }
}
