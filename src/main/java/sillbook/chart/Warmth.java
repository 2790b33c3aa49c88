// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

import java.util.function.DoubleUnaryOperator;

/** How warm it was over a stretch of time, in whatever unit the chart has. */
public record Warmth(double mean, double lowest, double highest) {
    public Warmth {
        if (!(lowest <= mean && mean <= highest)) {
            throw new IllegalArgumentException("a mean of " + mean + " is not from " + lowest + " to " + highest);
        }
    }

    /** The same all the time. */
    public static Warmth steady(double value) {
        return new Warmth(value, value, value);
    }

    /** In another unit, of which more is warmer too. */
    public Warmth in(DoubleUnaryOperator unit) {
        return new Warmth(unit.applyAsDouble(mean), unit.applyAsDouble(lowest), unit.applyAsDouble(highest));
    }
}
