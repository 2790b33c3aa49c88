// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import java.util.function.ToDoubleFunction;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.RealMatrix;

/**
 * Where to look at a density: around its top, as wide in each of its own directions as its curvature says, with the
 * tails of Student's t of 4 degrees, which are heavier than any that is looked at here.
 */
final class Proposal {
    /** Of the coordinate itself. */
    private static final double STEP = 0.02;
    /** Where the top is flat, no wider than 1. */
    private static final double FLATTEST = 1;

    private final double[] top;
    private final RealMatrix directions;
    private final double[] widths;

    private Proposal(double[] top, RealMatrix directions, double[] widths) {
        this.top = top;
        this.directions = directions;
        this.widths = widths;
    }

    /**
     * Looks about the top.
     *
     * @param top all above 0
     * @param minusLog the density's logarithm, turned over
     */
    static Proposal around(double[] top, ToDoubleFunction<double[]> minusLog) {
        var own = new EigenDecompositionSymmetric(curvature(top, minusLog));
        double[] widths = own.getEigenvalues();
        for (int k = 0; k < widths.length; k++) {
            widths[k] = 1 / Math.sqrt(Math.max(widths[k], FLATTEST));
        }
        return new Proposal(top, own.getV(), widths);
    }

    private static RealMatrix curvature(double[] top, ToDoubleFunction<double[]> function) {
        int size = top.length;
        RealMatrix curvature = new Array2DRowRealMatrix(size, size);
        double middle = function.applyAsDouble(top);
        double[] single = new double[size];
        for (int i = 0; i < size; i++) {
            single[i] = bothWays(function, top, i, i, 0.5) - 2 * middle;
            curvature.setEntry(i, i, single[i] / square(top, i, i));
        }
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < i; j++) {
                double both = bothWays(function, top, i, j, 1) - 2 * middle;
                double mixed = (both - single[i] - single[j]) / (2 * square(top, i, j));
                curvature.setEntry(i, j, mixed);
                curvature.setEntry(j, i, mixed);
            }
        }
        return curvature;
    }

    private static double square(double[] top, int i, int j) {
        return STEP * top[i] * STEP * top[j];
    }

    /** A step in both coordinates (half a step in each when they are one), forward and back, added. */
    private static double bothWays(ToDoubleFunction<double[]> function, double[] from, int i, int j, double part) {
        double sum = 0;
        for (int sign = -1; sign <= 1; sign += 2) {
            double[] at = from.clone();
            at[i] += sign * part * STEP * from[i];
            at[j] += sign * part * STEP * from[j];
            sum += function.applyAsDouble(at);
        }
        return sum;
    }

    /** @param uniform one a coordinate, between 0 and 1 */
    Drawn draw(double... uniform) {
        double[] spread = new double[uniform.length];
        double logDensity = 0;
        for (int k = 0; k < spread.length; k++) {
            double t = studentOf4(uniform[k]);
            logDensity -= 2.5 * Math.log1p(t * t / 4);
            spread[k] = t * widths[k];
        }
        double[] at = directions.operate(spread);
        for (int k = 0; k < at.length; k++) {
            at[k] += top[k];
        }
        return new Drawn(at, logDensity);
    }

    /**
     * The quantile of Student's t of 4 degrees (W. T. Shaw, Journal of Computational Finance 9(4), 2006, 37-73,
     * gives this closed form).
     */
    static double studentOf4(double chance) {
        double alpha = 4 * chance * (1 - chance);
        double root = Math.sqrt(alpha);
        double q = Math.cos(Math.acos(root) / 3) / root;
        return Math.copySign(2 * Math.sqrt(Math.max(0, q - 1)), chance - 0.5);
    }

    /** A place to look at, and how likely it was to be drawn. */
    static final class Drawn {
        private final double[] at;
        private final double logDensity;

        private Drawn(double[] at, double logDensity) {
            this.at = at;
            this.logDensity = logDensity;
        }

        double[] at() {
            return at;
        }

        /** But for a constant. */
        double logDensity() {
            return logDensity;
        }
    }
}
