// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import java.util.Arrays;
import java.util.List;

/**
 * Henderson's equations of a design, for standard deviations of the factors that are given as multiples of the
 * residual's. Written for effects in units of their own sd, so that an sd of 0 is as good as any.
 */
final class Equations {
    private final Design design;
    private final double[] scale;
    private final Triangle triangle;

    private Equations(Design design, double[] scale, Triangle triangle) {
        this.design = design;
        this.scale = scale;
        this.triangle = triangle;
    }

    /** @param ratios one a factor, in the design's order: its sd over the residual's */
    static Equations of(Design design, double[] ratios) {
        double[][] table = design.products();
        double[] scale = scale(design, ratios);
        for (int i = 0; i < table.length; i++) {
            for (int j = 0; j < table.length; j++) {
                table[i][j] *= scale[i] * scale[j];
            }
        }
        for (int level = 0; level < design.mean(); level++) {
            table[level][level] += 1;
        }
        return new Equations(design, scale, Triangle.of(table));
    }

    private static double[] scale(Design design, double[] ratios) {
        double[] scale = new double[design.score() + 1];
        scale[design.mean()] = 1;
        scale[design.score()] = 1;
        List<Factor> factors = design.layout();
        for (int f = 0; f < ratios.length; f++) {
            Factor factor = factors.get(f);
            Arrays.fill(scale, factor.first(), factor.column(factor.levels().size()), ratios[f]);
        }
        return scale;
    }

    /** -2 log restricted likelihood at the residual variance that is likeliest beside these ratios. */
    double profiled() {
        return determinants() + degrees() * (1 + Math.log(2 * Math.PI * residualVariance()));
    }

    /** -2 log restricted likelihood. */
    double criterion(double residualVariance) {
        return determinants() + degrees() * Math.log(2 * Math.PI * residualVariance) + unexplained() / residualVariance;
    }

    double residualVariance() {
        return unexplained() / degrees();
    }

    private double determinants() {
        return 2 * triangle.logOfDiagonal(design.score());
    }

    private int degrees() {
        return design.records() - 1;
    }

    private double unexplained() {
        double root = triangle.at(design.score(), design.score());
        return root * root;
    }

    /** The effect of a level, or the mean. */
    Combination column(int column) {
        double[] parts = new double[design.score()];
        parts[column] = scale[column];
        return new Combination(triangle.forward(parts));
    }

    /** The likeliest value, the design's centre not counted. */
    double value(Combination combination) {
        double[] parts = combination.parts();
        double sum = 0;
        for (int k = 0; k < parts.length; k++) {
            sum += parts[k] * triangle.at(k, design.score());
        }
        return sum;
    }
}
