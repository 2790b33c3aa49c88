// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

/** Costs are whole numbers, so that a bound is as good as the next whole number. */
final class Rounding {
    private static final double NOISE = 1e-6;

    private Rounding() {}

    /** The least whole cost at or above a bound, which may be a little too high by rounding errors. */
    static int up(double bound) {
        return (int) Math.ceil(bound - NOISE);
    }
}
