// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Purchase;
import sillbook.model.SeasonPlan;
import sillbook.plan.Trouble.Sort;

/** Looks for purchases that have fewer bulbs than a plan takes of them: they came short, or other pots have them. */
record BulbTroubles(Journal journal, SeasonPlan plan, List<PlannedPot> pots) {

    List<Trouble> list() {
        Map<Id<Purchase>, Set<Integer>> by = new TreeMap<>();
        for (int number = 0; number < pots.size(); number++) {
            int pot = number;
            pots.get(number)
                    .proposal()
                    .purchase()
                    .ifPresent(purchase -> by.computeIfAbsent(purchase, fresh -> new HashSet<>())
                            .add(pot));
        }
        List<Trouble> found = new ArrayList<>();
        by.forEach((purchase, numbers) ->
                lack(journal.purchases().get(purchase), numbers).ifPresent(found::add));
        return found;
    }

    private Optional<Trouble> lack(Purchase purchase, Set<Integer> numbers) {
        int wanted = numbers.stream()
                .mapToInt(number -> pots.get(number).proposal().bulbs())
                .sum();
        int there = Shares.leftFor(purchase, Shares.madeWayFor(plan, journal), journal);
        return wanted <= there
                ? Optional.empty()
                : Optional.of(new Trouble(
                        Sort.BULBS_SHORT, numbers, Optional.empty(), Optional.empty(), there, wanted, List.of()));
    }
}
