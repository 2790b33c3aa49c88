// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.util.List;
import sillbook.change.WriteDown;
import sillbook.model.Id;
import sillbook.model.SeasonPlan;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.words.plan.PlanLetters;

/** What puts a plan into the journal: keeping it, and going by it. */
record KeepOffers(PlanPage page, State state) {
    private static final String READ_ONLY = "the journal is read only";

    List<Offer> offers() {
        return List.of(keep(), adopt(), compare());
    }

    private SeasonPlan plan() {
        return page.drawn().plan(state);
    }

    private Offer keep() {
        return Offer.of(Action.KEEP_PLAN, this::kept)
                .offIf(page.sought().isGoingOn(), SeekOffers.GOES_ON)
                .offIf(page.drawn().isKept(state), "plan " + plan().name() + " is kept as it stands here")
                .offIf(plan().pots().isEmpty(), "there is no pot in it")
                .offIf(state.copy().isReadOnly(), READ_ONLY);
    }

    private Offer adopt() {
        SeasonPlan plan = plan();
        return Offer.of(
                        Action.ADOPT_PLAN,
                        () -> Step.to(state.laid(new AdoptSlip(page.drawn().now(state)))))
                .offIf(page.sought().isGoingOn(), SeekOffers.GOES_ON)
                .offIf(!page.drawn().isKept(state), "it is not kept yet, K keeps it")
                .offIf(plan.adopted().isPresent(), "the season goes by plan " + plan.name() + " already")
                .offIf(state.copy().isReadOnly(), READ_ONLY);
    }

    private Offer compare() {
        return Offer.of(Action.PLANS, () -> Step.to(state.laid(PlansPage.OPEN)));
    }

    private Step kept() {
        SeasonPlan plan = plan();
        Id<SeasonPlan> id = state.kit().ids().next();
        SeasonPlan named = plan.unadopted(id, PlanLetters.nextFree(plan.season(), state.journal()));
        PlanPage choosing = page.with(page.drawn().changed(plan).choosing(plan.season(), id));
        return Step.keep(
                state.withTop(choosing),
                new WriteDown(named),
                state.layers().over().size());
    }
}
