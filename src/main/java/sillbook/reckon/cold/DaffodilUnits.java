// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

import java.util.Optional;

/**
 * Days to the flower at 16 C after cold of three daffodils (A. R. Rees and G. R. Hanks, Journal of Horticultural Science 59, 1984): units are degree-days below 30 C in the cold; 2000 took 30 days, 2250 took
 * 21. Between the two a straight line; beyond them nothing was found out.
 */
public final class DaffodilUnits {
    private static final double BELOW = 30;
    private static final double FEW = 2000;
    private static final double MANY = 2250;
    private static final double SLOW = 30;
    private static final double FAST = 21;

    private DaffodilUnits() {}

    /** Units of some days at a temperature below 30 C. */
    public static double of(double days, double celsius) {
        return days * Math.max(0, BELOW - celsius);
    }

    /** Days to the flower at 16 C. */
    public static Optional<Double> days(double units) {
        return units < FEW || units > MANY
                ? Optional.empty()
                : Optional.of(SLOW + (FAST - SLOW) * (units - FEW) / (MANY - FEW));
    }
}
