// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.stages;

/**
 * A length of which the least, the usual and the most are known.
 *
 * <p>Its mean and sd are those of PERT (Malcolm, Roseboom, Clark and Fazar, <i>Operations Research</i> 7(5), 1959): the
 * usual counts four times, and low and high stand six sd apart. The beta curve that carries the same mean has a sd of its
 * own, near to that but not the same.
 *
 * @param low days, finite
 * @param typical days, from low to high
 * @param high days, finite
 */
public record ThreePoints(double low, double typical, double high) {
    private static final double WEIGHT_OF_TYPICAL = 4;
    private static final double SDS_APART = 6;

    public ThreePoints {
        if (!(Double.isFinite(low) && low <= typical && typical <= high && Double.isFinite(high))) {
            throw new IllegalArgumentException("no three points: " + low + ", " + typical + ", " + high);
        }
    }

    public double mean() {
        return (low + WEIGHT_OF_TYPICAL * typical + high) / SDS_APART;
    }

    public double sd() {
        return (high - low) / SDS_APART;
    }

    /**
     * The beta curve between low and high.
     *
     * @throws IllegalArgumentException when these are the same
     */
    public Distribution beta() {
        double width = width();
        return new ScaledBeta(
                low,
                high,
                1 + WEIGHT_OF_TYPICAL * (typical - low) / width,
                1 + WEIGHT_OF_TYPICAL * (high - typical) / width);
    }

    /**
     * The triangle between low and high with its top at the usual.
     *
     * @throws IllegalArgumentException when low and high are the same
     */
    public Distribution triangular() {
        return new Triangular(low, typical, low + width());
    }

    private double width() {
        if (low == high) {
            throw new IllegalArgumentException("no room between the least and the most: " + low);
        }
        return high - low;
    }
}
