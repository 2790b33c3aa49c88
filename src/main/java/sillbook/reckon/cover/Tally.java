// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.Comparator;

/**
 * What a plan comes to, the first the weightiest; less of each is better.
 *
 * @param unmet pots that wishes still lack, over all wishes
 * @param gapDays days of the season without anything in bloom
 * @param used pots brought in
 * @param overlap how many pots are in bloom beyond one, summed over the days of the season
 */
public record Tally(int unmet, int gapDays, int used, int overlap) implements Comparable<Tally> {
    private static final Comparator<Tally> ORDER = Comparator.comparingInt(Tally::unmet)
            .thenComparingInt(Tally::gapDays)
            .thenComparingInt(Tally::used)
            .thenComparingInt(Tally::overlap);

    @Override
    public int compareTo(Tally other) {
        return ORDER.compare(this, other);
    }

    /** What is left of a bound of this tally for a better one: at the goals after the first at which that is better, nothing. */
    Tally boundFor(Tally better, Tally bound) {
        if (better.unmet != unmet) {
            return new Tally(bound.unmet, 0, 0, 0);
        }
        if (better.gapDays != gapDays) {
            return new Tally(bound.unmet, bound.gapDays, 0, 0);
        }
        return better.used == used ? bound : new Tally(bound.unmet, bound.gapDays, bound.used, 0);
    }
}
