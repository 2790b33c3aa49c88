// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import java.util.Arrays;

/** A mixture of normal distributions: what is known of one figure after averaging over the variances. */
final class Blend {
    private static final int HALVINGS = 60;

    private double[] weights = new double[16];
    private double[] means = new double[16];
    private double[] sds = new double[16];
    private int size;

    void add(double weight, double mean, double sd) {
        if (size == weights.length) {
            weights = Arrays.copyOf(weights, 2 * size);
            means = Arrays.copyOf(means, 2 * size);
            sds = Arrays.copyOf(sds, 2 * size);
        }
        weights[size] = weight;
        means[size] = mean;
        sds[size] = sd;
        size++;
    }

    Estimate estimate(double centre) {
        double sum = 0;
        double first = 0;
        for (int i = 0; i < size; i++) {
            sum += weights[i];
            first += weights[i] * means[i];
        }
        double mean = first / sum;
        double variance = 0;
        for (int i = 0; i < size; i++) {
            double off = means[i] - mean;
            variance += weights[i] * (sds[i] * sds[i] + off * off);
        }
        return new Estimate(centre + mean, Math.sqrt(variance / sum));
    }

    /** The interval that holds so much of the chance, as much of the rest below as above. */
    Interval interval(double chance, double centre) {
        double tail = (1 - chance) / 2;
        return new Interval(centre + quantile(tail), centre + quantile(1 - tail));
    }

    private double quantile(double chance) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < size; i++) {
            low = Math.min(low, means[i] - 6 * sds[i]);
            high = Math.max(high, means[i] + 6 * sds[i]);
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (below(middle) < chance) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private double below(double value) {
        double sum = 0;
        double weight = 0;
        for (int i = 0; i < size; i++) {
            sum += weights[i] * Normal.below(value, means[i], sds[i]);
            weight += weights[i];
        }
        return sum / weight;
    }
}
