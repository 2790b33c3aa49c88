// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.shelf;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Every way to give pots their places on a shelf of one length, until one is found, none is left, or the effort is spent. Pots can always be pushed towards the beginning until each touches it or another, so that only sums of widths have to be tried as beginnings.
 */
final class Backtracking {
    private static final int NOWHERE = -1;

    private final List<Stay> stays;
    private final int height;
    private final int[] order;
    private final int[] offsets;
    private long left;

    /**
     * On a shelf so long.
     *
     * @param effort how often two numbers may be compared, above 0
     */
    Backtracking(List<Stay> stays, int height, long effort) {
        this.stays = stays;
        this.height = height;
        this.left = effort;
        this.order = IntStream.range(0, stays.size())
                .boxed()
                .sorted(Comparator.<Integer>comparingLong(i -> stays.get(i).from())
                        .thenComparing(i -> -stays.get(i).takes()))
                .mapToInt(Integer::intValue)
                .toArray();
        this.offsets = new int[stays.size()];
    }

    /** Where each begins, in the order of the stays; empty where there is no way, or none was found in time. */
    Optional<List<Integer>> offsets() {
        BitSet beginnings = sums();
        Arrays.fill(offsets, NOWHERE);
        int next = 0;
        while (next >= 0 && next < order.length && isComplete()) {
            int stay = order[next];
            offsets[stay] = free(next, beginnings);
            next += offsets[stay] == NOWHERE ? -1 : 1;
        }
        return next == order.length ? Optional.of(IntStream.of(offsets).boxed().toList()) : Optional.empty();
    }

    private BitSet sums() {
        BitSet sums = new BitSet(height + 1);
        sums.set(0);
        for (Stay stay : stays) {
            int sum = sums.previousSetBit(height - stay.takes());
            while (sum >= 0 && isComplete()) {
                left--;
                sums.set(sum + stay.takes());
                sum = sums.previousSetBit(sum - 1);
            }
        }
        return sums;
    }

    /** Whether nothing was left untried. */
    boolean isComplete() {
        return left > 0;
    }

    /** What is left of the effort. */
    long left() {
        return left;
    }

    /** The next place for a pot beside those before it, after the one it has; {@link #NOWHERE} where there is none. */
    private int free(int next, BitSet beginnings) {
        int stay = order[next];
        int last = height - stays.get(stay).takes();
        int at = beginnings.nextSetBit(offsets[stay] + 1);
        while (at >= 0 && at <= last && isComplete()) {
            if (isFree(next, at)) {
                return at;
            }
            at = beginnings.nextSetBit(at + 1);
        }
        return NOWHERE;
    }

    private boolean isFree(int next, int at) {
        Stay stay = stays.get(order[next]);
        for (int before = 0; before < next; before++) {
            left--;
            int other = order[before];
            boolean isBeside = at + stay.takes() <= offsets[other]
                    || offsets[other] + stays.get(other).takes() <= at;
            if (!isBeside && stay.meets(stays.get(other))) {
                return false;
            }
        }
        return true;
    }
}
