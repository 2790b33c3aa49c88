// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.util.List;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;

/** The search for the best plan: begun and stopped by the same key. */
record SeekOffers(PlanPage page, State state) {
    /** Why other keys have to wait. */
    static final String GOES_ON = "the search goes on, B stops it";

    List<Offer> offers() {
        if (page.sought().isGoingOn()) {
            return List.of(
                    Offer.of(Action.SEEK_BEST, this::stop).saying("stop"),
                    Offer.of(Action.BACK, this::stop).saying("stop"));
        }
        return List.of(Offer.of(Action.SEEK_BEST, this::begin));
    }

    private Step begin() {
        Sought begun = page.sought().begun(page.drawn().plan(state));
        return Step.to(
                state.withTop(page.seeking(begun)),
                new Effect.Seek(
                        begun.turn(),
                        page.drawn().planning(state),
                        page.drawn().plan(state).rule()));
    }

    /** The best so far is shown already. */
    private Step stop() {
        return Step.to(
                state.withTop(page.seeking(page.sought().stopped())),
                new Effect.StopSeeking(page.sought().turn()));
    }
}
