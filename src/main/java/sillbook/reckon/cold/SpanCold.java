// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

/**
 * The cold of a span of which only the lowest and the highest are known. Where both lie in what counts in full, all of it counts; otherwise what is
 * known is at least so much and at most so much, and no curve is made up between.
 *
 * @param least effective hours
 * @param most effective hours
 */
public record SpanCold(double hours, double least, double most) {

    /**
     * Bounds the cold of a span.
     *
     * @param hours it lasted
     * @param lowest in C, at most the highest
     */
    public static SpanCold of(double hours, double lowest, double highest, ColdWeight weight) {
        if (!(hours >= 0) || !(lowest <= highest)) {
            throw new IllegalArgumentException(hours + " hours from " + lowest + " up to " + highest);
        }
        double best = Math.max(lowest, Math.min(weight.full(), highest));
        return new SpanCold(hours, hours * Math.min(weight.at(lowest), weight.at(highest)), hours * weight.at(best));
    }

    /** Whether its two ends say all there is to know. */
    public boolean isCertain() {
        return least == most;
    }
}
