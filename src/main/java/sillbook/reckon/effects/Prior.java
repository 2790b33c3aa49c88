// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

/**
 * What is held of the variances before there are records: each sd half-normal, as likely to be near 0 as A. Gelman
 * asks of a prior for scales (Bayesian Analysis 1, 2006, 515-534).
 *
 * @param scale of the half-normal, in the score's unit
 * @param step between two neighbouring scores, where they are rounded; 0 where they are not. What is rounded off is
 *     never nothing, so a residual has at least the variance of it, a twelfth of the step squared
 */
public record Prior(double scale, double step) {
    /** For scores of 1 to 5 that know no halves. */
    public static final Prior WHOLE_SCORES = new Prior(1, 1);

    /** For scores of 1 to 5 with any fraction. */
    public static final Prior SCORES = new Prior(1, 0);

    public Prior {
        if (!(scale > 0 && scale < Double.POSITIVE_INFINITY && step >= 0 && step < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a prior of scale " + scale + " and step " + step);
        }
    }

    /** Log density of an sd, but for a constant. */
    double logDensity(double sd) {
        double z = sd / scale;
        return -z * z / 2;
    }

    double roundedOff() {
        return step * step / 12;
    }
}
