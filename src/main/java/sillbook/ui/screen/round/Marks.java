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

/** What is marked, pot by pot, and of dry bulbs purchase by purchase. */
record Marks(Map<Id<?>, Found> all) {
    static final Marks NONE = new Marks(Map.of());

    Marks {
        Map<Id<?>, Found> marked = new LinkedHashMap<>(all);
        marked.values().removeIf(Found::isNothing);
        all = Collections.unmodifiableMap(marked);
    }

    boolean isEmpty() {
        return all.isEmpty();
    }

    Found of(Id<?> marked) {
        return all.getOrDefault(marked, Found.NOTHING);
    }

    /** Each of these marked as the change says. */
    Marks with(List<? extends Id<?>> those, UnaryOperator<Found> change) {
        Map<Id<?>, Found> changed = new LinkedHashMap<>(all);
        those.forEach(marked -> changed.put(marked, change.apply(of(marked))));
        return new Marks(changed);
    }

    /** With a mark on all of these; without it where all have it. */
    Marks toggled(List<? extends Id<?>> those, Mark mark) {
        return haveAll(those, found -> found.has(mark))
                ? with(those, found -> found.without(mark))
                : with(those, found -> found.with(mark));
    }

    boolean haveAll(List<? extends Id<?>> those, Predicate<Found> mark) {
        return those.stream().map(this::of).allMatch(mark);
    }

    /** Only those on what is still there. */
    Marks on(Collection<? extends Id<?>> there) {
        Map<Id<?>, Found> kept = new LinkedHashMap<>(all);
        kept.keySet().retainAll(there);
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
