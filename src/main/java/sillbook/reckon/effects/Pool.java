// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import java.util.List;
import java.util.OptionalDouble;

/** The answers for one or more sets of variances, each with its weight, added up to one. */
final class Pool {
    private final Design design;
    private final List<FactorPool> factors;
    private final Blend mean = new Blend();
    private double residual;
    private double weight;
    private double squares;

    Pool(Design design) {
        this.design = design;
        factors = design.layout().stream()
                .map(factor -> new FactorPool(design, factor))
                .toList();
    }

    /** @param residualVariance of a record of weight 1, whatever it is made of */
    void add(double share, double[] sds, double residualSd, Equations equations, double residualVariance) {
        weight += share;
        squares += share * share;
        residual += share * residualSd;
        Combination[] solved = new Combination[design.score()];
        for (int column = 0; column < solved.length; column++) {
            solved[column] = equations.column(column);
        }
        Combination middle = solved[design.mean()];
        mean.add(share, equations.value(middle), Math.sqrt(residualVariance * middle.squaredLength()));
        for (int f = 0; f < sds.length; f++) {
            factors.get(f).add(share, sds[f], equations, solved, residualVariance);
        }
    }

    /** How many equally weighted sets these are worth (L. Kish, Survey Sampling, 1965). */
    double effectiveSize() {
        return weight * weight / squares;
    }

    Effects effects(OptionalDouble criterion, OptionalDouble effectiveSize) {
        return new Effects(
                mean.estimate(design.centre()),
                factors.stream().map(FactorPool::effects).toList(),
                residual / weight,
                criterion,
                effectiveSize);
    }
}
