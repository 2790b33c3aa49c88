// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

/** What is known of one difference, added up over the variances. */
final class Margin {
    private double weight;
    private double first;
    private double second;
    private double better;

    void add(double share, double value, double variance) {
        weight += share;
        first += share * value;
        second += share * (value * value + variance);
        better += share * (1 - Normal.below(0, value, Math.sqrt(variance)));
    }

    Difference between(String a, String b) {
        double mean = first / weight;
        return new Difference(a, b, mean, Math.sqrt(Math.max(0, second / weight - mean * mean)), better / weight);
    }
}
