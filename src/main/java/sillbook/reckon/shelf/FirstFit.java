// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.shelf;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** One pot after the other, each as near the beginning of the shelf as those before leave room. */
final class FirstFit {
    private FirstFit() {}

    /** Where each begins, in the order of the stays. */
    static List<Integer> of(List<Stay> stays, Comparator<Stay> order) {
        List<Integer> offsets = new ArrayList<>(Collections.nCopies(stays.size(), 0));
        List<Integer> placed = new ArrayList<>();
        IntStream.range(0, stays.size())
                .boxed()
                .sorted((one, other) -> order.compare(stays.get(one), stays.get(other)))
                .forEach(next -> {
                    offsets.set(next, lowest(stays, offsets, placed, stays.get(next)));
                    placed.add(next);
                });
        return offsets;
    }

    private static int lowest(List<Stay> stays, List<Integer> offsets, List<Integer> placed, Stay next) {
        int lowest = 0;
        List<Integer> beside = placed.stream()
                .filter(other -> stays.get(other).meets(next))
                .sorted(Comparator.comparing(offsets::get))
                .toList();
        for (int other : beside) {
            if (offsets.get(other) >= lowest + next.takes()) {
                return lowest;
            }
            lowest = Math.max(lowest, offsets.get(other) + stays.get(other).takes());
        }
        return lowest;
    }
}
