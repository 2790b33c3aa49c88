// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/** The lowest point of a smooth function within bounds that are the same for every coordinate. */
final class Search {
    private static final int MOST = 5000;
    private static final double RADIUS = 0.2;
    private static final double EXACT = 1e-8;
    /** What is left to gain there is the curve times its square. */
    private static final double LAST_RADIUS = 1e-6;

    private final double low;
    private final double high;

    Search(double low, double high) {
        this.low = low;
        this.high = high;
    }

    double[] lowest(ToDoubleFunction<double[]> function, double... start) {
        return switch (start.length) {
            case 0 -> start;
            case 1 -> alongALine(function, start[0]);
            default -> inSpace(function, start);
        };
    }

    /** R. P. Brent's method (Algorithms for Minimization without Derivatives, 1973). */
    private double[] alongALine(ToDoubleFunction<double[]> function, double start) {
        var optimizer = new BrentOptimizer(EXACT, EXACT);
        double best = optimizer
                .optimize(
                        new UnivariateObjectiveFunction(x -> function.applyAsDouble(new double[] {x})),
                        GoalType.MINIMIZE,
                        new SearchInterval(low, high, start),
                        new MaxEval(MOST))
                .getPoint();
        return new double[] {best};
    }

    /** M. J. D. Powell's BOBYQA (report DAMTP 2009/NA06, Cambridge). */
    private double[] inSpace(ToDoubleFunction<double[]> function, double... start) {
        double[] lows = new double[start.length];
        double[] highs = new double[start.length];
        Arrays.fill(lows, low);
        Arrays.fill(highs, high);
        return new BOBYQAOptimizer(2 * start.length + 1, RADIUS, LAST_RADIUS)
                .optimize(
                        new ObjectiveFunction(function::applyAsDouble),
                        GoalType.MINIMIZE,
                        new InitialGuess(start),
                        new SimpleBounds(lows, highs),
                        new MaxEval(MOST))
                .getPoint();
    }
}
