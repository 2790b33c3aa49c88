// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.stages;

/**
 * What is believed of a length that comes out a little different each time: a normal distribution of which neither mean
 * nor spread is known, with its conjugate prior (Gelman and others, <i>Bayesian Data Analysis</i>, 3rd edition, 3.3; Murphy,
 * <i>Conjugate Bayesian analysis of the Gaussian distribution</i>, 2007, section 6).
 *
 * @param centre the mean believed in, days
 * @param weight how many own lengths the centre is worth, above 0
 * @param shape of the inverse gamma of the variance, above 0
 * @param rate of the same, days squared, at least 0
 */
public record NormalInverseGamma(double centre, double weight, double shape, double rate) {
    /** How many own lengths the published centre is worth; a judgement of ours, as is the next. */
    private static final double PRIOR_WEIGHT = 2;

    private static final double PRIOR_SHAPE = 3;

    public NormalInverseGamma {
        boolean isSane = Double.isFinite(centre) && weight > 0 && shape > 0 && rate >= 0;
        if (!isSane || !Double.isFinite(weight + shape + rate)) {
            throw new IllegalArgumentException("no belief: " + centre + ", " + weight + ", " + shape + ", " + rate);
        }
    }

    /** Before anything of one's own is known: centred on the mean of three points, and as wide as their sd on average. */
    public static NormalInverseGamma before(ThreePoints published) {
        double variance = published.sd() * published.sd();
        return new NormalInverseGamma(published.mean(), PRIOR_WEIGHT, PRIOR_SHAPE, (PRIOR_SHAPE - 1) * variance);
    }

    /** The same, once these lengths were seen. */
    public NormalInverseGamma after(Sample own) {
        double weightAfter = weight + own.count();
        double off = own.count() == 0 ? 0 : own.mean() - centre;
        double drawn = weight * own.count() * off * off / weightAfter;
        return new NormalInverseGamma(
                centre + own.count() * off / weightAfter,
                weightAfter,
                shape + own.count() / 2.0,
                rate + (own.squares() + drawn) / 2);
    }

    /** How long the next one takes. */
    public StudentT next() {
        return new StudentT(centre, Math.sqrt(rate / shape * (1 + 1 / weight)), 2 * shape);
    }

    /** Where the mean itself lies. */
    public StudentT mean() {
        return new StudentT(centre, Math.sqrt(rate / shape / weight), 2 * shape);
    }
}
