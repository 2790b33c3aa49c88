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
    static final Comparator<Tallied> BEST = Comparator.comparing(Tallied::tally, Tally.BEST);

    public Tallied {
        grown = List.copyOf(grown);
    }

    static Tallied of(Shared what, List<Grown> grown) {
        return new Tallied(what, grown, Tally.of(grown));
    }
}
