// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.shelf;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Pots that come and go along a shelf, of which none is moved while it is there. */
public record Stays(List<Stay> stays) {
    /** About a second's work, in numbers compared. */
    private static final long EFFORT = 100_000_000;

    public Stays {
        stays = List.copyOf(stays);
    }

    /**
     * A place for each.
     *
     * @param offsets where each begins, in whole units, in their order
     * @param places how much of a shelf that wants
     * @param atLeast how much any way wants, by what is proven
     */
    public record Allocation(List<Integer> offsets, long places, long atLeast) {
        public Allocation {
            offsets = List.copyOf(offsets);
        }

        /** Whether no way wants less. */
        public boolean isProven() {
            return places == atLeast;
        }
    }

    /** The most that is taken on any day: what a shelf must have where pots may be moved at will. */
    public long load() {
        Map<Long, Long> changes = new TreeMap<>();
        for (Stay stay : stays) {
            changes.merge(stay.from(), (long) stay.takes(), Long::sum);
            changes.merge(stay.toExclusive(), (long) -stay.takes(), Long::sum);
        }
        long taken = 0;
        long most = 0;
        for (long change : changes.values()) {
            taken += change;
            most = Math.max(most, taken);
        }
        return most;
    }

    /** The shortest shelf that was found, and how short it can be at all: both the same where few enough stay. Pots of one width never want more than the load. */
    public Allocation allocation() {
        long load = load();
        Allocation greedy = Stream.of(
                        Comparator.comparingLong(Stay::from),
                        Comparator.comparingInt(Stay::takes).reversed().thenComparingLong(Stay::from),
                        Comparator.comparingLong((Stay stay) -> stay.from() - stay.toExclusive()))
                .map(order -> FirstFit.of(stays, order))
                .map(offsets -> new Allocation(offsets, height(offsets), load))
                .min(Comparator.comparingLong(Allocation::places))
                .orElseThrow();
        return greedy.isProven() ? greedy : exact(greedy);
    }

    private long height(List<Integer> offsets) {
        long height = 0;
        for (int i = 0; i < stays.size(); i++) {
            height = Math.max(height, (long) offsets.get(i) + stays.get(i).takes());
        }
        return height;
    }

    /** From the load upwards, until one is possible or too much is left open. */
    private Allocation exact(Allocation greedy) {
        long effort = EFFORT;
        for (long height = greedy.atLeast(); height < greedy.places(); height++) {
            Backtracking search = new Backtracking(stays, (int) height, effort);
            Optional<List<Integer>> offsets = search.offsets();
            if (offsets.isPresent()) {
                return new Allocation(offsets.get(), height, height);
            }
            if (!search.isComplete()) {
                return new Allocation(greedy.offsets(), greedy.places(), height);
            }
            effort = search.left();
        }
        return new Allocation(greedy.offsets(), greedy.places(), greedy.places());
    }
}
