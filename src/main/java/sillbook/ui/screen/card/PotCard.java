// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.handbook.FigureName;
import sillbook.model.Event;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Keys;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.act.Acts;
import sillbook.ui.screen.entry.Entry;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.ListPane;
import sillbook.ui.screen.list.Rows;
import sillbook.ui.screen.pot.PotAside;
import sillbook.ui.screen.why.WhoseFigure;

/**
 * The card of one pot. Its cursor walks what is ahead and what has been.
 *
 * @param pot whose card it is
 */
public record PotCard(Id<Pot> pot, Cursor cursor) implements Layer {

    public static PotCard of(State state, Id<Pot> pot) {
        return new PotCard(pot, Cursor.FIRST);
    }

    /** The card open at one entry of its history. */
    public static PotCard at(State state, Id<Pot> pot, Id<Event> entry) {
        Rows rows = new CardRows(state, pot).rows();
        return new PotCard(
                pot,
                Cursor.FIRST.to(new Thing.OfEvent(entry), rows, state.body().rows()));
    }

    @Override
    public Reach reach() {
        return Reach.PAGE;
    }

    private boolean isThere(State state) {
        return state.journal().pots().contains(pot);
    }

    private Rows rows(State state) {
        return isThere(state) ? new CardRows(state, pot).rows() : Rows.of(List.of());
    }

    @Override
    public Optional<Thing> thing(State state) {
        return isThere(state) ? Optional.of(Thing.of(pot)) : Optional.empty();
    }

    @Override
    public Look look(State state, Size body) {
        ListPane pane = new ListPane(rows(state), cursor);
        List<Id<Pot>> all = neighbours(state);
        Look look = Look.body(pane)
                .withPlace((all.indexOf(pot) + 1) + " of " + all.size())
                .withAside(isThere(state) ? new PotAside(state).of(pot) : Aside.NONE)
                .withFoot(
                        Action.DO_JOB,
                        Action.MOVE,
                        Action.CHECK,
                        Action.OUTCOME,
                        whose(state).isOn() ? Action.HANDBOOKS : Action.CORRECT,
                        Action.WHY,
                        Action.JOT,
                        Action.NEXT_POT);
        return pane.point(body.rows()).map(look::withCursor).orElse(look);
    }

    @Override
    public List<Offer> offers(State state) {
        Acts acts = new Acts(state.withPicked(Set.of()), thing(state));
        List<Offer> offers = new ArrayList<>();
        offers.add(acts.doJob());
        correction(state)
                .ifPresent(form -> offers.add(Offer.of(Action.CORRECT, () -> Step.to(state.laid(form)))
                        .saying("correct entry")
                        .offIf(state.copy().isReadOnly(), "the journal is read only")));
        offers.addAll(acts.offers());
        offers.add(whose(state));
        offers.add(Offer.byKey(Action.NEXT_POT, key -> next(state, key)));
        offers.add(Offer.moving(
                state,
                key -> new PotCard(
                        pot, cursor.pressed(key, rows(state), state.body().rows()))));
        return offers;
    }

    /** The form of what the cursor stands on: an entry of its history, or how it did. */
    private Optional<Layer> correction(State state) {
        Optional<Thing> there = cursor.thing(rows(state));
        Optional<Layer> ofEntry = there.flatMap(Thing::asEvent)
                .flatMap(state.journal().events()::find)
                .map(event -> Entry.correct(state, event));
        return ofEntry.or(() -> there.flatMap(Thing::asOutcome)
                .flatMap(state.journal().outcomes()::find)
                .map(outcome -> Entry.correct(state, outcome)));
    }

    /** The figure that the stage ahead on the cursor's line rests on, where that is one that can be learnt. */
    private Optional<FigureName> figure(State state) {
        return isThere(state) ? cursor.thing(rows(state)).flatMap(new CardRows(state, pot)::figure) : Optional.empty();
    }

    private Offer whose(State state) {
        return WhoseFigure.offer(state, pot, figure(state));
    }

    /** The pots of its season, by label as the page has them. */
    private List<Id<Pot>> neighbours(State state) {
        return state.almanac().lines(state.timescale().season()).stream()
                .flatMap(line -> line.pots().stream())
                .toList();
    }

    private Step next(State state, Key key) {
        List<Id<Pot>> all = neighbours(state);
        int at = all.indexOf(pot) + (key.equals(Keys.PAGE_UP) ? -1 : 1);
        return at < 0 || at >= all.size()
                ? Step.to(state)
                : Step.to(state.withTop(new PotCard(all.get(at), Cursor.FIRST)));
    }

    @Override
    public Layer settled(State before, State after, Cause cause) {
        return new PotCard(
                pot,
                cursor.settled(rows(before), rows(after), cause, after.body().rows()));
    }
}
