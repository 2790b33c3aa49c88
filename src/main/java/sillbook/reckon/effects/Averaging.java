// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.hipparchus.random.SobolSequenceGenerator;

/**
 * Effects averaged over all variances, each set weighted by how well it fits scores and prior. The mean has no prior.
 *
 * <p>The sum is quasi-Monte Carlo over the square roots of the sds, in which even a variance that may well be 0 has
 * nearly even slopes: Sobol's points, shifted as a whole by a fixed draw (R. Cranley and T. N. L. Patterson, SIAM
 * Journal on Numerical Analysis 13, 1976), laid around the top of what is summed, and weighted by how far the lay was
 * off. The same records always give the same answer.
 */
public final class Averaging {
    private static final long SEED = 5;
    private static final int MOST_POINTS = 8192;
    private static final int FEWEST_POINTS = 1024;
    /** Where roots of sds are looked for. */
    private static final double LEAST = 0.01;

    private static final double MOST = 10;

    /** Points times columns cubed: a second or so of work. */
    private static final double WORK = 1e9;
    /** A point of less weight than this, beside the top's, changes no digit that is shown. */
    private static final double NOTHING = 1e-7;

    private final Design design;
    private final Prior prior;

    private Averaging(Design design, Prior prior) {
        this.design = design;
        this.prior = prior;
    }

    /**
     * Averages over the variances.
     *
     * @return empty when the levels explain every score exactly and nothing was rounded off: no doubt can be reckoned
     */
    public static Optional<Effects> over(Design design, Prior prior) {
        if (prior.step() == 0 && Aliasing.of(design).explainsAll()) {
            return Optional.empty();
        }
        return Optional.of(new Averaging(design, prior).effects());
    }

    private Effects effects() {
        double[] start = new double[design.layout().size() + 1];
        Arrays.fill(start, Math.sqrt(prior.scale()));
        double[] top = new Search(LEAST, MOST * start[0]).lowest(this::minusLog, start);
        double height = minusLog(top);
        Proposal proposal = Proposal.around(top, this::minusLog);
        var points = new SobolSequenceGenerator(top.length);
        double[] shift = shift(top.length);
        Pool pool = new Pool(design);
        for (int left = points(); left > 0; left--) {
            add(proposal.draw(shifted(points.nextVector(), shift)), height, pool);
        }
        return pool.effects(OptionalDouble.empty(), OptionalDouble.of(pool.effectiveSize()));
    }

    private void add(Proposal.Drawn drawn, double height, Pool pool) {
        if (Arrays.stream(drawn.at()).allMatch(root -> root >= LEAST)) {
            Point point = new Point(drawn.at());
            double weight = Math.exp(height - point.minusLog() - drawn.logDensity());
            if (weight > NOTHING) {
                pool.add(weight, point.factorSds(), point.residualSd(), point.equations, point.residualVariance);
            }
        }
    }

    private int points() {
        int points = MOST_POINTS;
        while (points > FEWEST_POINTS && points * Math.pow(design.score(), 3) > WORK) {
            points /= 2;
        }
        return points;
    }

    private static double[] shift(int size) {
        var random = new SplittableRandom(SEED);
        double[] shift = new double[size];
        Arrays.setAll(shift, k -> random.nextDouble());
        return shift;
    }

    private static double[] shifted(double[] point, double... shift) {
        double[] shifted = new double[point.length];
        Arrays.setAll(shifted, k -> {
            double sum = point[k] + shift[k];
            return sum < 1 ? sum : sum - 1;
        });
        return shifted;
    }

    private double minusLog(double... roots) {
        return new Point(roots).minusLog();
    }

    /** The model at one set of sds: those of the factors, then the residual's. */
    private final class Point {
        private final double[] sds;
        private final double residualVariance;
        private final Equations equations;

        Point(double... roots) {
            sds = Arrays.stream(roots).map(root -> root * root).toArray();
            residualVariance = residualSd() * residualSd() + prior.roundedOff();
            double unit = Math.sqrt(residualVariance);
            equations = Equations.of(
                    design, Arrays.stream(factorSds()).map(sd -> sd / unit).toArray());
        }

        double[] factorSds() {
            return Arrays.copyOf(sds, sds.length - 1);
        }

        double residualSd() {
            return sds[sds.length - 1];
        }

        /** Of the density over the roots of the sds, hence the last term. */
        double minusLog() {
            double sum = equations.criterion(residualVariance) / 2;
            for (double sd : sds) {
                sum -= prior.logDensity(sd) + Math.log(sd) / 2;
            }
            return sum;
        }
    }
}
