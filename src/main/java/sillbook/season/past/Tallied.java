// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.Comparator;
import java.util.List;

/**
 * Pots that have something in common, and how they did.
 *
 * @param grown the judged and the others, the oldest winter first
 */
public record Tallied(Shared what, List<Grown> grown, Tally tally) {
    /** By their counts; where these are alike, the higher mean score first. */
    static final Comparator<Tallied> BEST = Comparator.comparing(Tallied::tally, Tally.BEST)
            .thenComparing(Comparator.comparingDouble(Tallied::mean).reversed());

    public Tallied {
        grown = List.copyOf(grown);
    }

    /** Of all scores alike; 0 where there is none, which no score is. */
    private double mean() {
        return grown.stream()
                .flatMap(one -> one.score().stream())
                .mapToInt(score -> score)
                .average()
                .orElse(0);
    }

    static Tallied of(Shared what, List<Grown> grown) {
        return new Tallied(what, grown, Tally.of(grown));
    }
}
