// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.util.Optional;
import sillbook.model.SeasonPlan;
import sillbook.plan.Seeking.Best;
import sillbook.plan.Seeking.Found;
import sillbook.plan.Seeking.Outcome;

/**
 * The search for the best plan.
 *
 * @param turn which search it is, so that what an earlier one still tells is not taken for this one's
 * @param from the plan whose season and rule it is for, while it goes on
 * @param best the best so far
 * @param outcome what came of it, until that was seen
 */
record Sought(int turn, Optional<SeasonPlan> from, Optional<Found> best, Optional<Outcome> outcome) {
    static final Sought NOTHING = new Sought(0, Optional.empty(), Optional.empty(), Optional.empty());

    Sought begun(SeasonPlan plan) {
        return new Sought(turn + 1, Optional.of(plan), Optional.empty(), Optional.empty());
    }

    boolean isGoingOn() {
        return from.isPresent();
    }

    /** Whether an answer is of the search that goes on. */
    boolean isTurn(int other) {
        return isGoingOn() && other == turn;
    }

    Sought found(Found better) {
        return new Sought(turn, from, Optional.of(better), Optional.empty());
    }

    /** No longer going on, whatever is still told of it. */
    Sought stopped() {
        return new Sought(turn, Optional.empty(), best, Optional.empty());
    }

    Sought ended(Outcome what) {
        Optional<Found> last = what instanceof Best found ? Optional.of(found.found()) : best;
        return new Sought(turn, Optional.empty(), last, Optional.of(what));
    }

    Sought seen() {
        return new Sought(turn, from, best, Optional.empty());
    }

    /** The plan that was found, with the rule it is for. */
    static SeasonPlan plan(SeasonPlan from, Found found) {
        return from.found(found.pots(), found.search());
    }
}
