// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.stages;

import org.hipparchus.distribution.continuous.BetaDistribution;

/**
 * A beta distribution between two ends.
 *
 * @param alpha above 0, as is {@code beta}
 */
record ScaledBeta(double low, double high, double alpha, double beta) implements Distribution {

    @Override
    public double mean() {
        return low + (high - low) * alpha / (alpha + beta);
    }

    /** For the shapes of {@link ThreePoints}, this is (mean - low)(high - mean) / 7. */
    @Override
    public double variance() {
        double shapes = alpha + beta;
        return (high - low) * (high - low) * alpha * beta / (shapes * shapes * (shapes + 1));
    }

    @Override
    public double cumulative(double days) {
        return unit().cumulativeProbability(Math.max(0, Math.min((days - low) / (high - low), 1)));
    }

    @Override
    public double quantile(double chance) {
        return low + (high - low) * unit().inverseCumulativeProbability(Distribution.checked(chance));
    }

    private BetaDistribution unit() {
        return new BetaDistribution(alpha, beta);
    }
}
