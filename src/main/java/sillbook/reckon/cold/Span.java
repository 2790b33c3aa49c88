// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

import java.time.Instant;

/**
 * A stretch of time of which a thermometer kept only the lowest and the highest, in C. What is known of its cold is at least so much and
 * at most so much; no curve is made up between.
 */
public record Span(Instant from, Instant to, double lowest, double highest) {
    public Span {
        if (!from.isBefore(to) || !(lowest <= highest)) {
            throw new IllegalArgumentException(from + " to " + to + ", " + lowest + " to " + highest);
        }
    }

    public double hours() {
        return Hours.between(from, to);
    }

    /** The effective hours it had at least. */
    public double least(HourWorth worth) {
        return hours() * worth.least(lowest, highest);
    }

    /** The effective hours it had at most. */
    public double most(HourWorth worth) {
        return hours() * worth.most(lowest, highest);
    }

    /** The moment after a share of it, 0 to 1. */
    Instant at(double share) {
        return Hours.at(share, from, to);
    }
}
