// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.SeasonPlan;
import sillbook.model.Variety;
import sillbook.plan.Supplies.Bulbs;

/**
 * Bulbs that an adopted plan still lacks, and the last day to order them.
 *
 * @param bulbs how many
 * @param supplier where such bulbs were last bought; empty where nobody said
 * @param orderBy the last day to order them, so that they are here when the first are potted
 * @param potBy the first day one of their pots is potted
 */
public record OrderDue(
        SeasonPlan plan, Id<Variety> variety, int bulbs, String supplier, LocalDate orderBy, LocalDate potBy) {
    /** Days before the last one from which on an order is spoken of (a judgement of ours). */
    private static final int AHEAD_DAYS = 14;

    /** What is to be ordered within two weeks of a day, or should have been, the nearest first; nothing of a season that is over. */
    public static List<OrderDue> on(LocalDate day, Journal journal) {
        return journal.seasonPlans().all().stream()
                .filter(plan -> plan.adopted().isPresent() && plan.season().compareTo(journal.seasonOf(day)) >= 0)
                .flatMap(plan -> of(plan, journal))
                .filter(due -> !day.isBefore(due.orderBy.minusDays(AHEAD_DAYS)))
                .sorted(Comparator.comparing(OrderDue::orderBy))
                .toList();
    }

    private static Stream<OrderDue> of(SeasonPlan plan, Journal journal) {
        return SuppliesReading.of(journal, plan).bulbs().stream()
                .filter(bulbs -> bulbs.wanting() > 0)
                .collect(Collectors.groupingBy(Bulbs::variety, LinkedHashMap::new, Collectors.toList()))
                .values()
                .stream()
                .map(bulbs -> of(plan, bulbs));
    }

    private static OrderDue of(SeasonPlan plan, List<Bulbs> some) {
        int lacking = some.stream().mapToInt(Bulbs::wanting).sum();
        Bulbs first = some.stream().min(Comparator.comparing(Bulbs::orderBy)).orElseThrow();
        return new OrderDue(plan, first.variety(), lacking, first.supplier(), first.orderBy(), first.potBy());
    }

    /** Whether the last day to order is past: they come too late for the first pot. */
    public boolean isLate(LocalDate day) {
        return day.isAfter(orderBy);
    }
}
