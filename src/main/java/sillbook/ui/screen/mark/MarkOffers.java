// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.mark;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import sillbook.change.Choose;
import sillbook.model.Choice;
import sillbook.model.Choice.Chosen;
import sillbook.model.Choice.Mark;
import sillbook.model.Choice.Undecided;
import sillbook.model.Season;
import sillbook.model.Variety;
import sillbook.season.past.UsualCount;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.entry.Entry;

/**
 * Marks a variety for the coming season. The same key again takes its mark off.
 *
 * @param variety the one under the cursor
 */
public record MarkOffers(State state, Optional<Variety> variety) {
    private static final String UNDECIDED = "undecided";

    public List<Offer> offers() {
        return List.of(
                offer(Action.CHOOSE_VARIETY, choice -> choice.bulbs().isPresent(), this::chosen),
                offer(Action.SET_ASIDE, Choice::isSetAside, one -> Step.to(state.laid(Entry.setAside(state, one)))));
    }

    private Offer offer(Action action, Predicate<Choice> isMarked, Function<Variety, Step> marked) {
        boolean isAgain = holding().filter(isMarked).isPresent();
        Function<Variety, Step> act = isAgain ? one -> marking(one, new Undecided()) : marked;
        Offer offer = Offer.of(action, () -> variety.map(act).orElseGet(() -> Step.to(state)))
                .offIf(variety.isEmpty(), "no variety is under the cursor")
                .offIf(state.copy().isReadOnly(), "the journal is read only");
        return isAgain ? offer.saying(UNDECIDED) : offer;
    }

    private Optional<Choice> holding() {
        return variety.flatMap(one -> state.journal().choiceHolding(one.id(), coming()));
    }

    private Season coming() {
        return state.journal().chosenFor(state.shown().today());
    }

    /** As many as usual; of a variety of which no number was ever written it is asked. */
    private Step chosen(Variety one) {
        return UsualCount.of(one.id(), coming(), state.journal())
                .map(UsualCount::bulbs)
                .filter(bulbs -> bulbs > 0)
                .map(bulbs -> marking(one, new Chosen(bulbs)))
                .orElseGet(() -> Step.to(state.laid(Entry.choose(state, one))));
    }

    /** The variety marked so, the page staying as it is. */
    public Step marking(Variety one, Mark mark) {
        return Step.keep(
                state,
                new Choose(one.id(), coming(), mark),
                state.layers().over().size());
    }
}
