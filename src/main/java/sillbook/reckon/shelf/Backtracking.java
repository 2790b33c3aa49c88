// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.shelf;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Every way to give pots their places on a shelf of one length, until one is found or none is left. Pots can always be pushed towards the beginning until each touches it or another, so that only sums of widths have to be tried as beginnings.
 */
final class Backtracking {
    /** More stays than these are not tried. */
    private static final int MOST_STAYS = 200;

    private static final long MOST_TRIES = 3_000_000;

    private final List<Stay> stays;
    private final int height;
    private final List<Integer> order;
    private final BitSet beginnings;
    private final int[] offsets;
    private long tries;

    Backtracking(List<Stay> stays, int height) {
        this.stays = stays;
        this.height = height;
        this.order = IntStream.range(0, stays.size())
                .boxed()
                .sorted(Comparator.<Integer>comparingLong(i -> stays.get(i).from())
                        .thenComparing(i -> -stays.get(i).takes()))
                .toList();
        this.offsets = new int[stays.size()];
        this.beginnings = stays.size() > MOST_STAYS ? new BitSet() : sums(stays, height);
    }

    private static BitSet sums(List<Stay> stays, int height) {
        BitSet sums = new BitSet(height + 1);
        sums.set(0);
        for (Stay stay : stays) {
            for (int sum = sums.previousSetBit(height - stay.takes()); sum >= 0; sum = sums.previousSetBit(sum - 1)) {
                sums.set(sum + stay.takes());
            }
        }
        return sums;
    }

    /** Where each begins, in the order of the stays; empty where there is no way, or none was found in time. */
    Optional<List<Integer>> offsets() {
        if (stays.size() > MOST_STAYS) {
            tries = MOST_TRIES;
            return Optional.empty();
        }
        if (!place(0)) {
            return Optional.empty();
        }
        List<Integer> found = new ArrayList<>();
        IntStream.of(offsets).forEach(found::add);
        return Optional.of(found);
    }

    /** Whether nothing was left untried. */
    boolean isComplete() {
        return tries < MOST_TRIES;
    }

    private boolean place(int next) {
        if (next == order.size()) {
            return true;
        }
        int stay = order.get(next);
        int last = height - stays.get(stay).takes();
        for (int at = beginnings.nextSetBit(0); at >= 0 && at <= last; at = beginnings.nextSetBit(at + 1)) {
            if (tries++ >= MOST_TRIES) {
                return false;
            }
            offsets[stay] = at;
            if (isFree(next) && place(next + 1)) {
                return true;
            }
        }
        return false;
    }

    private boolean isFree(int next) {
        int stay = order.get(next);
        for (int before = 0; before < next; before++) {
            int other = order.get(before);
            boolean isBeside = offsets[stay] + stays.get(stay).takes() <= offsets[other]
                    || offsets[other] + stays.get(other).takes() <= offsets[stay];
            if (!isBeside && stays.get(stay).meets(stays.get(other))) {
                return false;
            }
        }
        return true;
    }
}
