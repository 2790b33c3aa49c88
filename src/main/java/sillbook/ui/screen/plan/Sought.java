// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.util.Optional;
import sillbook.model.SeasonPlan;
import sillbook.plan.Planning;
import sillbook.plan.Seeking.Best;
import sillbook.plan.Seeking.Found;
import sillbook.plan.Seeking.Outcome;
import sillbook.ui.screen.State;
import sillbook.words.plan.SeekingWords;

/**
 * The search for the best plan.
 *
 * @param turn which search it is, so that what an earlier one still tells is not taken for this one's
 * @param from the plan whose season and rule it is for, while it goes on
 * @param best the best so far
 * @param told what came of it, in a sentence, until that was seen
 */
record Sought(int turn, Optional<SeasonPlan> from, Optional<Found> best, Optional<String> told) {
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

    /** Ended by the grower: no longer going on, whatever is still told of it. */
    Sought stopped() {
        return over(best, SeekingWords.stopped(best));
    }

    Sought ended(Outcome what) {
        Optional<Found> last = what instanceof Best found ? Optional.of(found.found()) : best;
        return over(last, SeekingWords.outcome(what));
    }

    /** As it stands after the journal changed: ended where the plan is made of other things now; what came of one that is over is told no more. */
    Sought after(State before, State after) {
        if (isOvertaken(before, after)) {
            return over(best, SeekingWords.OVERTAKEN);
        }
        return isGoingOn() ? this : seen();
    }

    boolean isOvertaken(State before, State after) {
        return from.filter(plan -> !planning(before, plan).isMadeOfTheSame(planning(after, plan)))
                .isPresent();
    }

    private static Planning planning(State state, SeasonPlan plan) {
        return state.almanac().plannings().of(plan.season());
    }

    private Sought over(Optional<Found> last, String sentence) {
        return new Sought(turn, Optional.empty(), last, Optional.of(sentence));
    }

    Sought seen() {
        return new Sought(turn, from, best, Optional.empty());
    }

    /** The plan that was found, with the rule it is for. */
    static SeasonPlan plan(SeasonPlan from, Found found) {
        return from.found(found.pots(), found.search());
    }
}
