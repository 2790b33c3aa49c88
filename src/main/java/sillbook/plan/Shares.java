// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.Intention;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.Purchase;
import sillbook.model.SeasonPlan;

/** Whose the bulbs of a purchase are. */
final class Shares {
    private Shares() {}

    /** Bulbs of a purchase that no other pots have than some. */
    static int leftFor(Purchase purchase, Collection<Id<Pot>> some, Journal journal) {
        int others = journal.pots().all().stream()
                .filter(pot -> !some.contains(pot.id()))
                .mapToInt(pot -> pot.bulbsFrom(purchase.id()))
                .sum();
        return Math.max(0, purchase.provides() - others);
    }

    /** The pots of a plan that are there, and those of another that were never potted: they make way when this one is adopted. */
    static List<Id<Pot>> madeWayFor(SeasonPlan plan, Journal journal) {
        Stream<Id<Pot>> own = plan.pots().stream().flatMap(pot -> pot.pot().stream());
        Stream<Id<Pot>> others = journal.intentions().all().stream()
                .map(Intention::pot)
                .filter(pot -> journal.pots().get(pot).season().equals(plan.season()))
                .filter(pot -> !journal.isPotted(pot));
        return Stream.concat(own, others).distinct().toList();
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
                .mapToInt(one -> one.bulbsFrom(purchase.id()))
                .sum();
        return wanted <= leftFor(purchase, all, journal);
    }
}
