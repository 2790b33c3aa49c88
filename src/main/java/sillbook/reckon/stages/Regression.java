// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.stages;

import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * What is believed of a length that comes out longer or shorter with the conditions it was under, each of them so many
 * days a unit, beside a spread nobody knows: linear regression with its conjugate prior (Murphy, <i>Machine Learning: A
 * Probabilistic Perspective</i>, 2012, 7.6.3). Without any condition it is {@link NormalInverseGamma}.
 *
 * <p>Before anything is seen no condition is believed to matter in either direction. So with few lengths, or with lengths
 * that were all under the same conditions, the answer stays near the level, and only gets more doubtful away from it.
 */
public final class Regression {
    /** As far as the two halves of a matrix may differ by rounding. */
    private static final double SYMMETRY = 1e-12;

    private final RealVector coefficients;
    private final RealMatrix precision;
    private final RealMatrix covariance;
    private final double shape;
    private final double rate;

    private Regression(RealVector coefficients, RealMatrix precision, double shape, double rate) {
        this.coefficients = coefficients;
        this.precision = precision;
        this.covariance = solver(precision).getInverse();
        this.shape = shape;
        this.rate = rate;
    }

    /**
     * One length, and what it was under.
     *
     * @param given each condition, counted from where the level holds; 0 where it is not known
     */
    public record Case(List<Double> given, double days) {
        public Case {
            given = List.copyOf(given);
        }
    }

    /**
     * Before anything of one's own is known.
     *
     * @param level what is believed of the length where every condition is 0
     * @param slopes how far each condition may well matter: the sd of its days a unit around none, where the variance of
     *     the lengths is what the level believes on average
     * @throws IllegalArgumentException when a slope is not above 0, or the level believes in no variance
     */
    public static Regression before(NormalInverseGamma level, List<Double> slopes) {
        double variance = level.rate() / (level.shape() - 1);
        boolean isSane = variance > 0 && slopes.stream().allMatch(sd -> sd > 0 && sd < Double.POSITIVE_INFINITY);
        if (!isSane) {
            throw new IllegalArgumentException("no belief: " + level + ", " + slopes);
        }
        RealVector coefficients = new ArrayRealVector(slopes.size() + 1);
        RealMatrix precision = new Array2DRowRealMatrix(slopes.size() + 1, slopes.size() + 1);
        coefficients.setEntry(0, level.centre());
        precision.setEntry(0, 0, level.weight());
        for (int i = 0; i < slopes.size(); i++) {
            precision.setEntry(i + 1, i + 1, variance / (slopes.get(i) * slopes.get(i)));
        }
        return new Regression(coefficients, precision, level.shape(), level.rate());
    }

    /** The same, once these lengths were seen. */
    public Regression after(List<Case> own) {
        RealMatrix after = precision.copy();
        RealVector drawn = precision.operate(coefficients);
        for (Case one : own) {
            RealVector row = row(one.given());
            after = after.add(row.outerProduct(row));
            drawn = drawn.add(row.mapMultiply(one.days()));
        }
        RealVector moved = solver(after).solve(drawn);
        RealVector off = moved.subtract(coefficients);
        double squares = off.dotProduct(precision.operate(off));
        for (Case one : own) {
            double miss = one.days() - row(one.given()).dotProduct(moved);
            squares += miss * miss;
        }
        return new Regression(moved, after, shape + own.size() / 2.0, rate + squares / 2);
    }

    /** How long the next one takes under these conditions. */
    public StudentT next(List<Double> given) {
        RealVector row = row(given);
        double doubt = 1 + row.dotProduct(covariance.operate(row));
        return new StudentT(row.dotProduct(coefficients), Math.sqrt(rate / shape * doubt), 2 * shape);
    }

    /** The days by which one more unit of a condition makes the length longer, likeliest. */
    public double slope(int condition) {
        return coefficients.getEntry(condition + 1);
    }

    /**
     * What all the others foretell of one of the lengths seen, without seeing them again (Cook and Weisberg, <i>Residuals
     * and Influence in Regression</i>, 1982, 2.2.1; what is believed before counts as rows of the regression).
     */
    StudentT without(Case seen) {
        RealVector row = row(seen.given());
        double left = 1 - row.dotProduct(covariance.operate(row));
        double miss = (seen.days() - row.dotProduct(coefficients)) / left;
        double rateLeft = Math.max(0, rate - miss * miss * left / 2);
        double shapeLeft = shape - 0.5;
        return new StudentT(seen.days() - miss, Math.sqrt(rateLeft / shapeLeft / left), 2 * shapeLeft);
    }

    private static RealVector row(List<Double> given) {
        RealVector row = new ArrayRealVector(given.size() + 1);
        row.setEntry(0, 1);
        for (int i = 0; i < given.size(); i++) {
            row.setEntry(i + 1, given.get(i));
        }
        return row;
    }

    private static DecompositionSolver solver(RealMatrix precision) {
        return new CholeskyDecomposition(precision, SYMMETRY, 0).getSolver();
    }
}
