// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.Intention;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.Purchase;

/** Whose the bulbs of a purchase are. */
final class Shares {
    private Shares() {}

    /** Bulbs of a purchase that no other pots have than some. */
    static int leftFor(Purchase purchase, Collection<Id<Pot>> some, Journal journal) {
        int others = journal.pots().all().stream()
                .filter(pot -> !some.contains(pot.id()))
                .mapToInt(pot -> bulbs(pot, purchase))
                .sum();
        return Math.max(0, purchase.provides() - others);
    }

    /** Some pots, and those of another plan that were never potted: they make way when this one is adopted. */
    static List<Id<Pot>> withoutAnother(List<Id<Pot>> own, Planning planning) {
        Stream<Id<Pot>> others = planning.candidates().stream()
                .filter(candidate -> candidate.isOpen() && candidate.cold().isEmpty())
                .flatMap(candidate -> candidate.pot().stream())
                .filter(pot -> Intention.of(pot, planning.journal()).isPresent());
        return Stream.concat(own.stream(), others).toList();
    }

    /**
     * Of pots that wait, in their order, those for which there still are bulbs, after the pots that are potted have theirs; those that are
     * of no purchase among them.
     */
    static List<Pot> filled(List<Pot> waiting, Journal journal) {
        return waiting.stream()
                .filter(pot -> pot.plantings().stream()
                        .flatMap(planting -> planting.purchase().stream())
                        .map(journal.purchases()::get)
                        .allMatch(purchase -> isFilled(pot, purchase, waiting, journal)))
                .toList();
    }

    private static boolean isFilled(Pot pot, Purchase purchase, List<Pot> waiting, Journal journal) {
        List<Id<Pot>> all = waiting.stream().map(Pot::id).toList();
        int wanted = waiting.subList(0, waiting.indexOf(pot) + 1).stream()
                .mapToInt(one -> bulbs(one, purchase))
                .sum();
        return wanted <= leftFor(purchase, all, journal);
    }

    private static int bulbs(Pot pot, Purchase purchase) {
        return pot.plantings().stream()
                .filter(planting -> planting.purchase().equals(Optional.of(purchase.id())))
                .mapToInt(Pot.Planting::count)
                .sum();
    }
}
