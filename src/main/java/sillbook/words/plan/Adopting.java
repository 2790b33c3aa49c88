// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import sillbook.change.AdoptPlan;
import sillbook.model.Id;
import sillbook.model.Variety;
import sillbook.model.Wish;
import sillbook.plan.PlanNow;
import sillbook.words.Kinds;

/** What is to be known to adopt a plan: the letters its labels begin with, and which of its pots meet which wish. */
public final class Adopting {
    private Adopting() {}

    public static AdoptPlan of(PlanNow now, Kinds kinds) {
        Map<Id<Variety>, String> letters = new HashMap<>();
        now.pots().stream()
                .map(pot -> pot.candidate().variety())
                .forEach(variety -> letters.put(variety.id(), kinds.letter(variety.kind())));
        Map<Id<Wish>, Set<Integer>> meets = new HashMap<>();
        now.wishes().stream()
                .filter(met -> !met.pots().isEmpty())
                .forEach(met -> meets.put(met.wish().id(), Set.copyOf(met.pots())));
        return new AdoptPlan(now.plan().id(), letters, meets);
    }
}
