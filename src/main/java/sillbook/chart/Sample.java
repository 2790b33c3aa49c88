// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

import java.time.Instant;

/** A value at an instant. */
public record Sample(Instant at, double value) {
    public Sample {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("no value at " + at);
        }
    }
}
