// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

import java.time.Duration;
import java.time.Instant;

/** Lengths of time as hours, and moments within them. */
final class Hours {
    private static final double NANOS = 3.6e12;

    private Hours() {}

    static double between(Instant from, Instant to) {
        return Duration.between(from, to).toNanos() / NANOS;
    }

    /** The moment after a share of the time between two, 0 to 1. */
    static Instant at(double share, Instant from, Instant to) {
        return from.plusNanos(Math.round(share * Duration.between(from, to).toNanos()));
    }
}
