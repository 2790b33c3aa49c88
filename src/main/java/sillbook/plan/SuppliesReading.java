// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Proposal;
import sillbook.model.Purchase;
import sillbook.model.Purchase.Money;
import sillbook.model.SeasonPlan;
import sillbook.model.Stock;
import sillbook.model.Variety;
import sillbook.plan.Supplies.Bulbs;
import sillbook.plan.Supplies.Leftover;
import sillbook.plan.Supplies.State;

/** Reads what a plan takes. Pots that are potted already have what they need. */
public final class SuppliesReading {
    private final Journal journal;
    private final SeasonPlan plan;

    /** Bulbs that were bought and are in no pot, the first bought first. */
    private final List<Leftover> spare;

    /** Bulbs of one variety from one purchase, or from none. */
    private record From(Id<Variety> variety, Optional<Id<Purchase>> purchase) {}

    private SuppliesReading(Journal journal, SeasonPlan plan) {
        this.journal = journal;
        this.plan = plan;
        this.spare = spare(journal, plan);
    }

    public static Supplies of(Journal journal, SeasonPlan plan) {
        return new SuppliesReading(journal, plan).read();
    }

    private Supplies read() {
        List<Proposal> toMake = plan.pots().stream().filter(this::isToMake).toList();
        return new Supplies(
                bulbs(toMake),
                leftOver(toMake),
                new PotsNeeded(journal, plan.season()).of(toMake),
                new MixNeeded(journal).of(toMake),
                (int) toMake.stream().filter(pot -> pot.pot().isEmpty()).count());
    }

    private boolean isToMake(Proposal pot) {
        return pot.pot().filter(journal::isPotted).isEmpty();
    }

    private List<Bulbs> bulbs(List<Proposal> toMake) {
        Map<From, List<Proposal>> by = toMake.stream()
                .collect(Collectors.groupingBy(
                        pot -> new From(pot.variety(), pot.purchase()), LinkedHashMap::new, Collectors.toList()));
        return by.entrySet().stream()
                .map(one -> bulbs(one.getKey(), one.getValue()))
                .sorted(Comparator.comparing(Bulbs::supplier)
                        .thenComparing(
                                one -> journal.varieties().get(one.variety()).name())
                        .thenComparing(Bulbs::state))
                .toList();
    }

    private Bulbs bulbs(From from, List<Proposal> pots) {
        Optional<Purchase> purchase = from.purchase().map(journal.purchases()::get);
        int bulbs = pots.stream().mapToInt(Proposal::bulbs).sum();
        int there = purchase.map(one -> Shares.leftFor(one, Shares.madeWayFor(plan, journal), journal))
                .orElseGet(() -> since(from.variety(), one -> one.state() != Purchase.State.TO_ORDER));
        State state = purchase.map(one -> state(one, bulbs, there)).orElseGet(() -> state(from.variety(), bulbs));
        int wanting = state == State.TO_ORDER && purchase.isPresent() ? bulbs : Math.max(0, bulbs - there);
        LocalDate potBy = pots.stream()
                .map(pot -> pot.course().potting())
                .min(Comparator.naturalOrder())
                .orElseThrow();
        Optional<Purchase> last = purchase.or(() -> last(from.variety(), any -> true));
        return new Bulbs(
                last.map(Purchase::supplier).orElse(""),
                from.variety(),
                last.map(one -> one.grade().printed()).orElse(""),
                from.purchase(),
                state,
                bulbs,
                pots.size(),
                wanting,
                cost(purchase, from.variety(), wanting),
                potBy,
                potBy.minusDays(Supplies.DELIVERY_DAYS));
    }

    private static State state(Purchase purchase, int bulbs, int there) {
        return purchase.state() != Purchase.State.TO_ORDER && there < bulbs
                ? State.SHORT
                : switch (purchase.state()) {
                    case TO_ORDER -> State.TO_ORDER;
                    case ORDERED -> State.ORDERED;
                    case IN_HAND -> State.IN_HAND;
                    case REJECTED -> State.SHORT;
                };
    }

    /** Of bulbs that are of no purchase: as those are that were bought since. */
    private State state(Id<Variety> variety, int bulbs) {
        if (since(variety, one -> one.state() == Purchase.State.IN_HAND) >= bulbs) {
            return State.IN_HAND;
        }
        if (since(variety, one -> one.state() != Purchase.State.TO_ORDER) >= bulbs) {
            return State.ORDERED;
        }
        return since(variety, any -> true) >= bulbs ? State.TO_ORDER : State.TO_BUY;
    }

    /** Bulbs of a variety that were bought and are in no pot. */
    private int since(Id<Variety> variety, Predicate<Purchase> does) {
        return spare.stream()
                .filter(one -> one.variety().equals(variety)
                        && does.test(journal.purchases().get(one.purchase())))
                .mapToInt(Leftover::bulbs)
                .sum();
    }

    private Optional<Money> cost(Optional<Purchase> purchase, Id<Variety> variety, int wanting) {
        return wanting == 0
                ? Optional.empty()
                : purchase.filter(SuppliesReading::isPriced)
                        .or(() -> last(variety, SuppliesReading::isPriced))
                        .flatMap(one -> one.costOf(wanting));
    }

    private static boolean isPriced(Purchase purchase) {
        return purchase.price().isPresent();
    }

    /** The last of a variety of those that will do. */
    private Optional<Purchase> last(Id<Variety> variety, Predicate<Purchase> does) {
        return journal.purchases().all().stream()
                .filter(one -> one.variety().equals(variety) && does.test(one))
                .max(Comparator.comparing(Purchase::day));
    }

    /** What is bought and in no pot, less what pots get that wait for such bulbs, of the first bought first. */
    private List<Leftover> leftOver(List<Proposal> toMake) {
        Map<Id<Variety>, Integer> waiting = toMake.stream()
                .filter(pot -> pot.purchase().isEmpty())
                .collect(Collectors.groupingBy(Proposal::variety, Collectors.summingInt(Proposal::bulbs)));
        List<Leftover> left = new ArrayList<>();
        for (Leftover one : spare) {
            int given = Math.min(one.bulbs(), waiting.getOrDefault(one.variety(), 0));
            waiting.merge(one.variety(), -given, Integer::sum);
            if (given < one.bulbs()) {
                left.add(new Leftover(one.purchase(), one.variety(), one.bulbs() - given));
            }
        }
        return left;
    }

    private static List<Leftover> spare(Journal journal, SeasonPlan plan) {
        Map<Id<Purchase>, Integer> taken = plan.pots().stream()
                .filter(pot -> pot.pot().isEmpty() && pot.purchase().isPresent())
                .collect(Collectors.groupingBy(
                        pot -> pot.purchase().orElseThrow(), Collectors.summingInt(Proposal::bulbs)));
        return journal.purchases().all().stream()
                .filter(one -> one.season().equals(plan.season()))
                .sorted(Comparator.comparing(Purchase::day))
                .map(one -> new Leftover(
                        one.id(), one.variety(), Stock.unplanted(one, journal) - taken.getOrDefault(one.id(), 0)))
                .filter(one -> one.bulbs() > 0)
                .toList();
    }
}
