// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.round;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.Pot;

/** What is marked, pot by pot. */
record Marks(Map<Id<Pot>, Found> all) {
    static final Marks NONE = new Marks(Map.of());

    Marks {
        Map<Id<Pot>, Found> marked = new LinkedHashMap<>(all);
        marked.values().removeIf(Found::isNothing);
        all = Collections.unmodifiableMap(marked);
    }

    boolean isEmpty() {
        return all.isEmpty();
    }

    Found of(Id<Pot> pot) {
        return all.getOrDefault(pot, Found.NOTHING);
    }

    /** Each of these pots marked as the change says. */
    Marks with(List<Id<Pot>> pots, UnaryOperator<Found> change) {
        Map<Id<Pot>, Found> changed = new LinkedHashMap<>(all);
        pots.forEach(pot -> changed.put(pot, change.apply(of(pot))));
        return new Marks(changed);
    }

    /** With a mark on all of these pots; without it where all have it. */
    Marks toggled(List<Id<Pot>> pots, Mark mark) {
        return haveAll(pots, found -> found.has(mark))
                ? with(pots, found -> found.without(mark))
                : with(pots, found -> found.with(mark));
    }

    boolean haveAll(List<Id<Pot>> pots, Predicate<Found> mark) {
        return pots.stream().map(this::of).allMatch(mark);
    }

    /** Only those on pots that are still there. */
    Marks on(Collection<Id<Pot>> pots) {
        Map<Id<Pot>, Found> kept = new LinkedHashMap<>(all);
        kept.keySet().retainAll(pots);
        return new Marks(kept);
    }

    /** Pots marked alike, in the order of these pots; unmarked ones are left out. */
    Map<Found, List<Id<Pot>>> alike(List<Id<Pot>> pots) {
        Map<Found, List<Id<Pot>>> groups = new LinkedHashMap<>();
        for (Id<Pot> pot : pots) {
            groups.merge(of(pot), List.of(pot), Marks::together);
        }
        groups.remove(Found.NOTHING);
        return groups;
    }

    private static List<Id<Pot>> together(List<Id<Pot>> some, List<Id<Pot>> more) {
        return Stream.concat(some.stream(), more.stream()).toList();
    }
}
