// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import sillbook.model.Failure.Sign;
import sillbook.reckon.effects.Estimate;
import sillbook.reckon.effects.Interval;
import sillbook.reckon.effects.Proportion;

/**
 * What one influence has to its credit.
 *
 * @param grown with it, scored or not, the oldest winter first
 * @param level its score, all else being average; empty where it has no score, or where nobody can tell it apart
 * @param notToldFrom the others it is neither surely above nor surely below, 9 times in 10, the nearest first
 * @param onlyAt the place where all its scored pots had their cold, of two or more; empty of a
 *     place itself
 */
public record Merit(
        Influence influence,
        List<Grown> grown,
        Optional<Level> level,
        List<Influence> notToldFrom,
        Optional<Influence> onlyAt) {
    /** Up to so many scores, it is said to be little. */
    public static final int FEW = 3;

    public Merit {
        grown = List.copyOf(grown);
        notToldFrom = List.copyOf(notToldFrom);
    }

    /**
     * A score with its doubt.
     *
     * @param eighty holds the truth 8 times in 10
     */
    public record Level(Estimate score, Interval eighty) {}

    public int scores() {
        return (int) grown.stream().filter(one -> one.score().isPresent()).count();
    }

    public boolean isFew() {
        return scores() <= FEW;
    }

    /** Of its scores, all else left as it was; empty when there is none. */
    public OptionalDouble plainMean() {
        return grown.stream()
                .flatMap(one -> one.score().stream())
                .mapToInt(score -> score)
                .average();
    }

    /** Bulbs that flowered of those planted, where they were counted and it is known whose they were. */
    public Proportion flowered() {
        return Outcomes.of(grown).flowered();
    }

    /** The signs of failure that were seen, each in so many of those of which anything was written. */
    public Map<Sign, Proportion> signs() {
        return Outcomes.of(grown).signs();
    }
}
