// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.stages;

import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Student's t, moved and stretched: how long the next one takes when centre and spread are themselves only about known.
 *
 * @param centre days
 * @param scale days, at least 0; at 0 the length is the centre, and nothing else
 * @param degreesOfFreedom above 0
 */
public record StudentT(double centre, double scale, double degreesOfFreedom) implements Distribution {
    public StudentT {
        boolean isSane = Double.isFinite(centre) && scale >= 0 && degreesOfFreedom > 0;
        if (!isSane || Double.isInfinite(scale) || Double.isInfinite(degreesOfFreedom)) {
            throw new IllegalArgumentException("no t distribution: " + centre + ", " + scale + ", " + degreesOfFreedom);
        }
    }

    @Override
    public double mean() {
        return centre;
    }

    @Override
    public double variance() {
        boolean hasOne = degreesOfFreedom > 2;
        return hasOne ? scale * scale * degreesOfFreedom / (degreesOfFreedom - 2) : Double.POSITIVE_INFINITY;
    }

    @Override
    public double cumulative(double days) {
        if (scale == 0) {
            return days < centre ? 0 : 1;
        }
        return standard().cumulativeProbability((days - centre) / scale);
    }

    @Override
    public double quantile(double chance) {
        double checked = Distribution.checked(chance);
        return scale == 0 ? centre : centre + scale * standard().inverseCumulativeProbability(checked);
    }

    /** The same, so many times as far from its centre. */
    public StudentT widened(double by) {
        return new StudentT(centre, scale * by, degreesOfFreedom);
    }

    /** The days between which the next one lies with a chance, as often below them as above. */
    public Interval interval(double chance) {
        double below = (1 - Distribution.checked(chance)) / 2;
        return new Interval(quantile(below), quantile(1 - below));
    }

    /** The chance of a length as far from the centre as this one, or farther, to either side. */
    double tails(double days) {
        double distance = Math.abs(days - centre);
        return 2 * cumulative(centre - distance);
    }

    private TDistribution standard() {
        return new TDistribution(degreesOfFreedom);
    }

    /** Two numbers of days and what lies between them. */
    public record Interval(double low, double high) {}
}
