// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import sillbook.model.Season;
import sillbook.model.SeasonPlan;
import sillbook.plan.Nudge;
import sillbook.plan.PlanNow;
import sillbook.plan.PlannedPot;
import sillbook.ui.draw.Key;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.RulerKeys;
import sillbook.ui.screen.Said;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.act.Acts;
import sillbook.ui.screen.entry.Entry;
import sillbook.words.Days;
import sillbook.words.plan.PlanNames;

/** What can be done on the page of the plan, while no field is typed in. */
record PlanOffers(PlanPage page, State state) {
    private static final int WEEK = 7;
    private static final Map<Key, Integer> DAYS =
            Map.of(Key.of('+'), 1, Key.of('-'), -1, Key.of(']'), WEEK, Key.of('['), -WEEK);

    /** Here their keys mean something else. */
    private static final Set<Action> NOT_HERE = Set.of(Action.NEW_POT, Action.REMOVE, Action.WHY);

    private static final String NO_POT = "no pot is under the cursor";

    List<Offer> offers() {
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.moving(
                state, key -> page.at(page.list(state).pressed(key, state.body().rows()))));
        offers.addAll(nudges(State::withTop));
        offers.add(Offer.of(Action.OPEN_PLANNED, () -> Step.to(state.laid(PlannedCard.of(under().orElseThrow()))))
                .offIf(under().isEmpty(), NO_POT));
        offers.add(Offer.of(Action.WHY, () -> Step.to(state.laid(PlanWhy.OPEN))));
        offers.add(Offer.of(Action.SUPPLIES, () -> Step.to(state.laid(SuppliesPage.OPEN))));
        offers.add(Offer.of(Action.REMOVE, this::without)
                .offIf(under().isEmpty(), NO_POT)
                .offIf(page.sought().isGoingOn(), SeekOffers.GOES_ON));
        if (page.isRibbon()) {
            offers.add(Offer.of(Action.PLAN_WISH, () -> Step.to(state.laid(Entry.newWishInFull())))
                    .offIf(state.copy().isReadOnly(), "the journal is read only"));
        } else {
            offers.add(Offer.of(Action.RULE_FIELDS, this::fields)
                    .offIf(page.sought().isGoingOn(), SeekOffers.GOES_ON));
            offers.add(Offer.of(Action.PLAN_POT, this::one).offIf(page.sought().isGoingOn(), SeekOffers.GOES_ON));
        }
        offers.add(Offer.of(Action.VIEW, () -> Step.to(state.withTop(page.turnedOver())))
                .saying(page.isRibbon() ? "by hand" : "ribbon"));
        offers.addAll(new RulerKeys(state).offers());
        offers.add(season(Action.SEASON_BEFORE, page.drawn().season(state).previous()));
        offers.add(season(Action.SEASON_AFTER, page.drawn().season(state).next()));
        offers.addAll(new KeepOffers(page, state).offers());
        offers.addAll(new SeekOffers(page, state).offers());
        new Acts(state, pot())
                .offers().stream()
                        .filter(offer -> !NOT_HERE.contains(offer.action()))
                        .forEach(offers::add);
        return offers;
    }

    private SeasonPlan plan() {
        return page.drawn().plan(state);
    }

    private Optional<Integer> under() {
        return page.under(state);
    }

    /** What is under the cursor, where it is there already. */
    private Optional<Thing> pot() {
        return under().flatMap(number -> plan().pots().get(number).pot()).map(Thing::of);
    }

    private Step to(PlanPage other) {
        return Step.to(state.withTop(other));
    }

    private Step fields() {
        return to(page.typing(Optional.of(RuleTyped.of(plan().rule()))));
    }

    private Offer season(Action action, Season season) {
        return Offer.of(action, () -> to(page.with(page.drawn().turned(season)).settled(state)));
    }

    /**
     * The keys that move the pot under the cursor by days.
     *
     * @param changing puts the page as it then is into the state
     */
    List<Offer> nudges(BiFunction<State, PlanPage, State> changing) {
        return Stream.of(Action.NUDGE_DAY, Action.NUDGE_WEEK)
                .map(action -> Offer.byKey(
                                action, key -> nudged(under().orElseThrow(), DAYS.getOrDefault(key, 0), changing))
                        .offIf(under().isEmpty(), NO_POT)
                        .offIf(page.sought().isGoingOn(), SeekOffers.GOES_ON))
                .toList();
    }

    /** Its days are said too: under the months a day is less than a cell. */
    private Step nudged(int number, int days, BiFunction<State, PlanPage, State> changing) {
        SeasonPlan moved = Nudge.by(page.drawn().planning(state), plan(), number, days);
        PlanPage after = moved.pots().equals(plan().pots()) ? page : page.changed(moved);
        PlanNow now = after.drawn().now(state);
        PlannedPot pot = now.pots().get(number);
        String says = new PlanNames(state.journal(), now.plan()).whole(number) + " comes in "
                + Days.day(pot.course().in(), now.ribbon().days()) + ", flowers about "
                + Days.date(pot.flowers().likely(), now.ribbon().days()) + ".";
        return Step.to(changing.apply(state, after).saying(Said.done(says)));
    }

    /** One more, with the pot under the cursor; else on the rule's first day. */
    private Step one() {
        LocalDate in = under().map(number -> plan().pots().get(number).course().in())
                .orElse(plan().rule().from());
        SeasonPlan more = Nudge.with(page.drawn().planning(state), plan(), in);
        if (more.pots().equals(plan().pots())) {
            return Step.to(state.saying(Said.problem("No bulbs are left that can come in on " + Days.day(in)
                    + ". Buy more on Bulbs, or take another day.")));
        }
        return to(page.changed(more));
    }

    private Step without() {
        int number = under().orElseThrow();
        String whole = new PlanNames(state.journal(), plan()).whole(number);
        SeasonPlan fewer = Nudge.without(plan(), number);
        if (fewer.pots().size() == plan().pots().size()) {
            return Step.to(state.saying(Said.problem(
                    whole + " is there already; a plan goes on with it. What is no longer grown is done: O on Pots.")));
        }
        return Step.to(state.withTop(page.changed(fewer).settled(state)).saying(Said.done(whole + " is left out.")));
    }
}
