// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Effects at the variances of the highest restricted likelihood. A variance may come out as exactly 0; the factor then
 * explains nothing, and its levels are one. Quick; but with few records or levels the variances are hardly known, and
 * this answer takes them as if they were: {@link Averaging} does not.
 */
public final class Reml {
    /** Roots of ratios are looked for up to here. */
    private static final double MOST = 100;

    private static final double LITTLE = 0.05;

    private Reml() {}

    /**
     * Finds the variances and the effects at them.
     *
     * @return empty when the levels leave nothing of the scores over, from which the doubt could be reckoned
     */
    public static Optional<Effects> fit(Design design) {
        if (Aliasing.of(design).leavesNothing()) {
            return Optional.empty();
        }
        double[] ratios = ratios(design);
        Equations best = Equations.of(design, ratios);
        double variance = best.residualVariance();
        double residual = Math.sqrt(variance);
        double[] sds = Arrays.stream(ratios).map(ratio -> ratio * residual).toArray();
        Pool pool = new Pool(design);
        pool.add(1, sds, residual, best, variance);
        return Optional.of(pool.effects(OptionalDouble.of(best.profiled()), OptionalDouble.empty()));
    }

    /** Sds of the factors over the residual's, where the restricted likelihood is highest. */
    static double[] ratios(Design design) {
        double[] start = new double[design.layout().size()];
        Arrays.fill(start, 1);
        double[] found = search(design, start);
        double[] lifted = lifted(design, found);
        return Arrays.equals(lifted, found) ? found : search(design, lifted);
    }

    /** The search is over the roots of the ratios: it is quickest there. */
    private static double[] search(Design design, double... start) {
        double[] roots = new Search(0, MOST)
                .lowest(
                        at -> profiled(design, squares(at)),
                        Arrays.stream(start).map(Math::sqrt).toArray());
        return grounded(design, squares(roots));
    }

    private static double[] squares(double... roots) {
        return Arrays.stream(roots).map(root -> root * root).toArray();
    }

    /** At 0 the likelihood is level whatever lies beside it: where it is higher a little further on, the search goes on from there. */
    private static double[] lifted(Design design, double... found) {
        double[] lifted = found.clone();
        for (int f = 0; f < lifted.length; f++) {
            double[] with = lifted.clone();
            with[f] = LITTLE;
            if (lifted[f] == 0 && profiled(design, with) < profiled(design, lifted)) {
                lifted = with;
            }
        }
        return lifted;
    }

    private static double profiled(Design design, double... ratios) {
        return Equations.of(design, ratios).profiled();
    }

    /** A search may stop a hair above 0: where 0 is as good, it is 0. */
    private static double[] grounded(Design design, double... found) {
        double[] grounded = found.clone();
        for (int f = 0; f < grounded.length; f++) {
            double[] without = grounded.clone();
            without[f] = 0;
            if (profiled(design, without) <= profiled(design, grounded) + 1e-9) {
                grounded = without;
            }
        }
        return grounded;
    }
}
