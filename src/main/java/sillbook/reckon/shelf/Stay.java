// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.shelf;

/**
 * A pot that keeps its place: one that leaves frees it on the same day.
 *
 * @param from a day, counted from any
 * @param toExclusive the day it leaves, after that
 * @param takes how much of the shelf, in whole units, above 0
 */
public record Stay(long from, long toExclusive, int takes) {
    public Stay {
        if (from >= toExclusive || takes <= 0) {
            throw new IllegalArgumentException("a stay of " + takes + " from " + from + " to " + toExclusive);
        }
    }

    boolean meets(Stay other) {
        return from < other.toExclusive && other.from < toExclusive;
    }
}
