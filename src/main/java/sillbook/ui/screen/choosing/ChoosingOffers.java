// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.choosing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import sillbook.change.OrderChosen;
import sillbook.model.Choice.Chosen;
import sillbook.season.past.Candidate;
import sillbook.season.past.Choosing;
import sillbook.ui.draw.Key;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.Said;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.act.Acts;
import sillbook.ui.screen.bulbs.VarietyCard;
import sillbook.ui.screen.entry.Entry;
import sillbook.ui.screen.mark.MarkOffers;
import sillbook.ui.screen.why.ExplanationSlip;
import sillbook.words.CandidateWhy;

/**
 * What can be done on Choosing.
 *
 * @param under what the cursor stands on
 */
record ChoosingOffers(State state, Optional<Candidate> under) {
    /** Here their keys mean something else, or there is nothing for them. */
    private static final Set<Action> NOT_HERE =
            Set.of(Action.NEW_POT, Action.CHECK, Action.CORRECT, Action.REMOVE, Action.WHY);

    private static final Map<Key, Integer> STEPS =
            Map.of(Key.of('+'), 1, Key.of('-'), -1, Key.of(']'), 5, Key.of('['), -5);

    /** More bulbs than this are asked about: a slip of the finger would be dear. */
    private static final int MANY_BULBS = 100;

    private static final String NO_VARIETY = "there is no variety here";
    private static final String READ_ONLY = "the journal is read only";

    List<Offer> offers() {
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.of(
                        Action.OPEN_VARIETY,
                        () -> laidOver(
                                one -> state.laid(VarietyCard.of(one.variety().id()))))
                .offIf(under.isEmpty(), NO_VARIETY));
        offers.addAll(marks().offers());
        offers.add(Offer.byKey(Action.HOW_MANY, this::howMany)
                .offIf(under.isEmpty(), NO_VARIETY)
                .offIf(chosen().isEmpty(), "it is not chosen, C chooses it")
                .offIf(isReadOnly(), READ_ONLY));
        offers.add(handOn());
        offers.add(Offer.of(Action.WHY, () -> laidOver(this::why)).offIf(under.isEmpty(), NO_VARIETY));
        offers.add(Offer.of(Action.NEW_VARIETY, () -> Step.to(state.laid(Entry.newVariety())))
                .offIf(isReadOnly(), READ_ONLY));
        offers.add(Offer.of(Action.CORRECT, () -> laidOver(one -> state.laid(Entry.correct(state, one.variety()))))
                .offIf(under.isEmpty(), NO_VARIETY)
                .offIf(isReadOnly(), READ_ONLY));
        new Acts(state, under.map(one -> new Thing.OfVariety(one.variety().id())))
                .offers().stream()
                        .filter(offer -> !NOT_HERE.contains(offer.action()))
                        .forEach(offers::add);
        return offers;
    }

    private Step laidOver(Function<Candidate, State> layer) {
        return Step.to(under.map(layer).orElse(state));
    }

    private State why(Candidate candidate) {
        return state.laid(new ExplanationSlip(new CandidateWhy(state.journal()).explain(choosing(), candidate)));
    }

    private MarkOffers marks() {
        return new MarkOffers(state, under.map(Candidate::variety));
    }

    private boolean isReadOnly() {
        return state.copy().isReadOnly();
    }

    private Choosing choosing() {
        return state.almanac().choosing();
    }

    private Optional<Integer> chosen() {
        return under.flatMap(Candidate::chosen);
    }

    private Step howMany(Key key) {
        int bulbs = chosen().orElse(0) + STEPS.getOrDefault(key, 0);
        return under.filter(one -> bulbs > 0)
                .map(one -> marks().marking(one.variety(), new Chosen(bulbs)))
                .orElseGet(() -> Step.to(
                        state.saying(Said.problem("Fewer than 1 is none: C takes the mark off, X sets it aside."))));
    }

    private Offer handOn() {
        int bulbs = choosing().bulbsToOrder();
        OrderChosen order = new OrderChosen(choosing().season());
        return Offer.of(
                        Action.HAND_ON,
                        () -> bulbs > MANY_BULBS
                                ? Step.to(state.laid(new OrderSlip(order)))
                                : Step.keep(state, order, state.layers().over().size()))
                .offIf(choosing().chosen().isEmpty(), "nothing is chosen, C chooses")
                .offIf(bulbs == 0, "all that is chosen is to order, ordered or in hand")
                .offIf(isReadOnly(), READ_ONLY);
    }
}
