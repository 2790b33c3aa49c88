// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import sillbook.model.Proposal;
import sillbook.model.Season;
import sillbook.model.SeasonPlan;
import sillbook.model.SeasonPlan.Rule;
import sillbook.plan.HandRule;
import sillbook.plan.PlanLookup;
import sillbook.plan.PlanNow;
import sillbook.plan.PlanReading;
import sillbook.plan.Planning;
import sillbook.plan.Ribbon;
import sillbook.plan.Supplies;
import sillbook.plan.SuppliesReading;

/**
 * What is planned with, and what plans come to, each worked out when it is first asked for. Of plans only the last few are remembered: one
 * that is changed by hand is another after each key.
 */
public final class Plannings implements PlanLookup {
    private static final int REMEMBERED = 32;

    private final Function<Season, Planning> planning;
    private final Map<Season, Planning> plannings = new HashMap<>();
    private final Map<SeasonPlan, PlanNow> now = lastFew();
    private final Map<SeasonPlan, List<Ribbon>> wished = lastFew();
    private final Map<SeasonPlan, Supplies> supplies = lastFew();
    private final Map<Ruled, List<Proposal>> byHand = lastFew();

    /** What pots by hand rest on. */
    private record Ruled(Season season, Rule rule) {}

    Plannings(Function<Season, Planning> planning) {
        this.planning = planning;
    }

    @Override
    public Planning of(Season season) {
        return plannings.computeIfAbsent(season, planning);
    }

    @Override
    public PlanNow now(SeasonPlan plan) {
        return remembered(now, plan, one -> PlanReading.of(of(one.season()), one));
    }

    /** What of a plan is in bloom for each of its wishes. */
    public List<Ribbon> wished(SeasonPlan plan) {
        return remembered(wished, plan, one -> {
            PlanNow worked = now(one);
            return worked.wishes().stream().map(met -> worked.of(met.wish())).toList();
        });
    }

    /** What a plan takes. */
    public Supplies supplies(SeasonPlan plan) {
        return remembered(
                supplies, plan, one -> SuppliesReading.of(of(one.season()).journal(), one));
    }

    /** The pots of a season by a rule. */
    public List<Proposal> byHand(Season season, Rule rule) {
        return remembered(byHand, new Ruled(season, rule), ruled -> HandRule.pots(of(season), rule));
    }

    private static <K, V> V remembered(Map<K, V> known, K key, Function<K, V> work) {
        V value = Optional.ofNullable(known.get(key)).orElseGet(() -> work.apply(key));
        known.put(key, value);
        return value;
    }

    private static <K, V> Map<K, V> lastFew() {
        return new LinkedHashMap<>(REMEMBERED, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                return size() > REMEMBERED;
            }
        };
    }
}
