// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.shelf;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** One pot after the other, each as near the beginning of the shelf as those before leave room. */
final class FirstFit {
    private final List<Stay> stays;
    private final int[] offsets;

    /** Those that have their place, in the order of where they begin. */
    private final int[] placed;

    private int count;

    private FirstFit(List<Stay> stays) {
        this.stays = stays;
        this.offsets = new int[stays.size()];
        this.placed = new int[stays.size()];
    }

    /** Where each begins, in the order of the stays. */
    static List<Integer> of(List<Stay> stays, Comparator<Stay> order) {
        FirstFit fit = new FirstFit(stays);
        IntStream.range(0, stays.size())
                .boxed()
                .sorted((one, other) -> order.compare(stays.get(one), stays.get(other)))
                .forEach(fit::place);
        return IntStream.of(fit.offsets).boxed().toList();
    }

    private void place(int next) {
        offsets[next] = lowest(stays.get(next));
        int at = count;
        while (at > 0 && offsets[placed[at - 1]] > offsets[next]) {
            placed[at] = placed[at - 1];
            at--;
        }
        placed[at] = next;
        count++;
    }

    private int lowest(Stay next) {
        int lowest = 0;
        for (int i = 0; i < count; i++) {
            int other = placed[i];
            if (offsets[other] >= lowest + next.takes()) {
                return lowest;
            }
            if (stays.get(other).meets(next)) {
                lowest = Math.max(lowest, offsets[other] + stays.get(other).takes());
            }
        }
        return lowest;
    }
}
