// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Proposal;
import sillbook.model.Season;
import sillbook.model.SeasonPlan;
import sillbook.model.SeasonPlan.Rule;
import sillbook.plan.PlanNow;
import sillbook.plan.Planning;
import sillbook.ui.screen.Plannings;
import sillbook.ui.screen.State;
import sillbook.words.plan.PlanLetters;

/**
 * Which plan of which season is shown.
 *
 * @param turnedTo the season gone to by hand; empty for the one that is planned now
 * @param drafts for each season what was last made of a plan and is not kept
 * @param chosen for each season the kept plan that is shown rather than the draft
 */
record Drawn(Optional<Season> turnedTo, Map<Season, SeasonPlan> drafts, Map<Season, Id<SeasonPlan>> chosen) {
    static final Drawn NOTHING = new Drawn(Optional.empty(), Map.of(), Map.of());

    /** What is not kept has no name of its own in the journal. */
    private static final Id<SeasonPlan> DRAFT = new Id<>(0, 0);

    Drawn {
        drafts = Map.copyOf(drafts);
        chosen = Map.copyOf(chosen);
    }

    Season season(State state) {
        return turnedTo.orElseGet(() -> SeasonPlan.plannedOn(state.shown().today(), state.journal()));
    }

    Drawn turned(Season to) {
        return new Drawn(Optional.of(to), drafts, chosen);
    }

    private static Plannings plannings(State state) {
        return state.almanac().plannings();
    }

    Planning planning(State state) {
        return plannings(state).of(season(state));
    }

    /** The plans of the season that are kept. */
    List<SeasonPlan> kept(State state) {
        return SeasonPlan.of(season(state), state.journal());
    }

    /**
     * The plan shown: the one chosen; what was made of it, or the kept one that is the same; the one adopted, or the first; a first one by
     * hand.
     */
    SeasonPlan plan(State state) {
        Season season = season(state);
        return Optional.ofNullable(chosen.get(season))
                .flatMap(id -> state.journal().seasonPlans().find(id))
                .or(() -> made(state).map(made -> kept(state, made).orElse(made)))
                .or(() -> adopted(state))
                .or(() -> kept(state).stream().findFirst())
                .orElseGet(() -> byHand(state, planning(state).usualRule()));
    }

    /** What is not kept, if anything is. */
    Optional<SeasonPlan> draft(State state) {
        return made(state).filter(made -> kept(state, made).isEmpty());
    }

    private Optional<SeasonPlan> made(State state) {
        return Optional.ofNullable(drafts.get(season(state)));
    }

    /** The seasons, in their order, of which a plan is made that is not kept. */
    List<Season> unkept(Journal journal) {
        return drafts.values().stream()
                .filter(made -> same(made, journal).isEmpty())
                .map(SeasonPlan::season)
                .sorted()
                .toList();
    }

    private static Optional<SeasonPlan> kept(State state, SeasonPlan made) {
        return same(made, state.journal());
    }

    /** The same plan, if it is kept; its pots may have been made since. */
    private static Optional<SeasonPlan> same(SeasonPlan made, Journal journal) {
        return SeasonPlan.of(made.season(), journal).stream()
                .filter(one -> one.rule().equals(made.rule()) && unmade(one).equals(unmade(made)))
                .findFirst();
    }

    private static List<Proposal> unmade(SeasonPlan plan) {
        return plan.pots().stream().map(pot -> pot.about(Optional.empty())).toList();
    }

    /** The plan that the season goes by. */
    Optional<SeasonPlan> adopted(State state) {
        return SeasonPlan.adopted(season(state), state.journal());
    }

    /** What the plan shown comes to. */
    PlanNow now(State state) {
        return plannings(state).now(plan(state));
    }

    boolean isKept(State state) {
        return state.journal().seasonPlans().find(plan(state).id()).isPresent();
    }

    /** Another plan made of it. */
    Drawn changed(SeasonPlan plan) {
        Map<Season, SeasonPlan> more = new HashMap<>(drafts);
        more.put(plan.season(), plan.unadopted(DRAFT, plan.name()));
        Map<Season, Id<SeasonPlan>> fewer = new HashMap<>(chosen);
        fewer.remove(plan.season());
        return new Drawn(turnedTo, more, fewer);
    }

    /** A plan that is kept, or will be as soon as the journal says so. */
    Drawn choosing(Season season, Id<SeasonPlan> plan) {
        Map<Season, Id<SeasonPlan>> more = new HashMap<>(chosen);
        more.put(season, plan);
        return new Drawn(turnedTo, drafts, more);
    }

    /** One of the plans there are shown: a kept one, or what is not kept. */
    Drawn showing(SeasonPlan plan) {
        Map<Season, Id<SeasonPlan>> other = new HashMap<>(chosen);
        other.remove(plan.season());
        return plan.id().equals(DRAFT) ? new Drawn(turnedTo, drafts, other) : choosing(plan.season(), plan.id());
    }

    /** Pots by a rule. */
    SeasonPlan byHand(State state, Rule rule) {
        List<Proposal> pots = plannings(state).byHand(season(state), rule);
        return new SeasonPlan(
                DRAFT,
                season(state),
                PlanLetters.nextFree(season(state), state.journal()),
                rule,
                pots,
                Optional.empty(),
                Optional.empty(),
                "");
    }

    /** The same after the journal changed: what is gone from it is in no draft any more. */
    Drawn in(Journal journal) {
        Map<Season, SeasonPlan> left = new HashMap<>();
        drafts.forEach((season, plan) -> left.put(season, still(plan, journal)));
        return new Drawn(turnedTo, left, chosen);
    }

    private static SeasonPlan still(SeasonPlan plan, Journal journal) {
        List<Proposal> pots = plan.pots().stream()
                .filter(pot -> plan.withPots(List.of(pot)).refersTo().allMatch(journal::contains))
                .toList();
        return pots.size() == plan.pots().size() ? plan : plan.withPots(pots);
    }
}
