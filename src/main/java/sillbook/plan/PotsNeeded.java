// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Container;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.Proposal;
import sillbook.model.Season;
import sillbook.plan.Supplies.Pots;

/** Which containers a plan takes, and how many of them are free. */
record PotsNeeded(Journal journal, Season season) {

    /** Those that the pots to be made take; where too few of these are free, the others that are after them. */
    List<Pots> of(List<Proposal> toMake) {
        List<Pots> needed = needed(toMake);
        Stream<Pots> others = needed.stream().allMatch(pots -> pots.toBuy() == 0) ? Stream.of() : others(needed);
        return Stream.concat(needed.stream(), others).toList();
    }

    private Stream<Pots> others(List<Pots> needed) {
        return journal.containers().all().stream()
                .filter(one ->
                        needed.stream().noneMatch(pots -> pots.container().equals(one.id())))
                .map(one -> pots(one, 0))
                .filter(pots -> pots.free() > 0);
    }

    private List<Pots> needed(List<Proposal> toMake) {
        Map<Id<Container>, Long> needed = toMake.stream()
                .flatMap(pot -> pot.container().stream())
                .collect(Collectors.groupingBy(id -> id, TreeMap::new, Collectors.counting()));
        return needed.entrySet().stream()
                .map(one -> pots(journal.containers().get(one.getKey()), (int) (long) one.getValue()))
                .toList();
    }

    private Pots pots(Container container, int needed) {
        int free = Math.max(0, container.stock() - inUse(container.id()));
        return new Pots(container.id(), needed, free, Math.min(free, container.unwashed()));
    }

    /** By pots of the season and the one before that are potted and not done; those that wait are the plan's own. */
    private int inUse(Id<Container> container) {
        return (int) journal.pots().all().stream()
                .filter(pot -> pot.container().filter(container::equals).isPresent())
                .filter(pot -> !pot.season().isBefore(season.previous()))
                .filter(pot -> journal.isPotted(pot.id()) && !isClosed(pot))
                .count();
    }

    private boolean isClosed(Pot pot) {
        return journal.history(pot.id()).stream().anyMatch(event -> event.what() instanceof Happening.Closed);
    }
}
