// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

import java.time.Instant;

/** What a thermometer read, in C. */
public record Reading(Instant at, double celsius) {
    public Reading {
        if (!Double.isFinite(celsius)) {
            throw new IllegalArgumentException("a reading of " + celsius + " at " + at);
        }
    }
}
