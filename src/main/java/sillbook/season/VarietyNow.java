// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.List;
import java.util.OptionalDouble;
import sillbook.model.Season;
import sillbook.model.Variety;

/**
 * A variety, and its record so far.
 *
 * @param inHand bulbs bought for this season that are in no pot
 * @param winters those in which an outcome of it was scored, the first first
 */
public record VarietyNow(Variety variety, int inHand, List<Winter> winters) {
    public VarietyNow {
        winters = List.copyOf(winters);
    }

    /**
     * How it did in one winter.
     *
     * @param scores one of each pot that was given one, by label
     */
    public record Winter(Season season, List<Integer> scores) {
        public Winter {
            scores = List.copyOf(scores);
        }

        public double mean() {
            return scores.stream().mapToInt(score -> score).average().orElseThrow();
        }
    }

    /** How many pots were scored. */
    public int pots() {
        return winters.stream().mapToInt(winter -> winter.scores().size()).sum();
    }

    /** Of all its scores alike; empty when there is none. */
    public OptionalDouble mean() {
        return winters.stream()
                .flatMap(winter -> winter.scores().stream())
                .mapToInt(score -> score)
                .average();
    }
}
