// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import java.util.List;

/**
 * One score, with its level of each factor.
 *
 * @param weight how many times as exact as a record of weight 1: the inverse of its error's variance
 * @param levels one for each factor of the design, in the design's order
 */
public record Observation(double score, double weight, List<String> levels) {
    public Observation {
        if (!Double.isFinite(score)) {
            throw new IllegalArgumentException("a score must be a number, not " + score);
        }
        if (!(weight > 0 && weight < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a weight must be above 0, not " + weight);
        }
        levels = List.copyOf(levels);
    }

    public static Observation of(double score, List<String> levels) {
        return new Observation(score, 1, levels);
    }
}
