// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.bulbs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Event;
import sillbook.model.Id;
import sillbook.model.Purchase;
import sillbook.model.Variety;
import sillbook.season.VarietyNow;
import sillbook.season.past.Shared;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.entry.Entry;
import sillbook.ui.screen.grown.PotsBehind;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.ListPane;
import sillbook.ui.screen.list.Rows;

/** The card of one variety. Its cursor walks the variety itself, its figures, its purchases and its notes. */
public record VarietyCard(Id<Variety> variety, Cursor cursor) implements Layer {

    public static VarietyCard of(Id<Variety> variety) {
        return new VarietyCard(variety, Cursor.FIRST);
    }

    @Override
    public Reach reach() {
        return Reach.PAGE;
    }

    private Optional<VarietyNow> now(State state) {
        return state.almanac().varieties().stream()
                .filter(now -> now.variety().id().equals(variety))
                .findFirst();
    }

    private Rows rows(State state) {
        return now(state).map(now -> new VarietyCardRows(state, now).rows()).orElse(Rows.of(List.of()));
    }

    @Override
    public Optional<Thing> thing(State state) {
        return cursor.thing(rows(state));
    }

    private Optional<Purchase> purchase(State state) {
        return thing(state).flatMap(Thing::asPurchase).flatMap(state.journal().purchases()::find);
    }

    private Optional<Event> note(State state) {
        return thing(state).flatMap(Thing::asEvent).flatMap(state.journal().events()::find);
    }

    @Override
    public Look look(State state, Size body) {
        ListPane pane = new ListPane(rows(state), cursor);
        Look look = Look.body(pane)
                .withPlace(pane.place(body.rows()))
                .withAside(aside(state))
                .withFoot(
                        Action.ARRIVED,
                        Action.OPEN_POTS,
                        Action.CHOOSE_VARIETY,
                        Action.CORRECT,
                        Action.NEW_PURCHASE,
                        Action.JOT,
                        Action.NEW_VARIETY,
                        Action.WRITE_LINE,
                        Action.BACK);
        return pane.point(body.rows()).map(look::withCursor).orElse(look);
    }

    private Aside aside(State state) {
        return new BulbAside(state).of(purchase(state), now(state).map(VarietyNow::variety));
    }

    @Override
    public List<Offer> offers(State state) {
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.moving(
                state,
                key -> new VarietyCard(
                        variety, cursor.pressed(key, rows(state), state.body().rows()))));
        offers.add(purchase(state)
                .flatMap(bought -> BulbOffers.arrived(state, bought))
                .orElseGet(() -> pots(state)));
        Optional<Thing> about = purchase(state).isPresent() ? thing(state) : Optional.of(new Thing.OfVariety(variety));
        Optional<Variety> known = now(state).map(VarietyNow::variety);
        new BulbOffers(state, about, known, correction(state, known))
                .offers().stream().map(offer -> said(state, offer)).forEach(offers::add);
        return offers;
    }

    /** All pots of it there ever were; on a winter with the cursor on that winter's first. */
    private Offer pots(State state) {
        PotsBehind all = PotsBehind.of(new Shared.OfVariety(variety));
        PotsBehind pots = thing(state)
                .flatMap(thing -> VarietyCardRows.winter(state, variety, thing))
                .map(winter -> all.at(state, winter.grown().get(0).pot().id()))
                .orElse(all);
        return Offer.of(Action.OPEN_POTS, () -> Step.to(state.laid(pots)))
                .offIf(state.almanac().winters().of(variety).isEmpty(), "no pot of it grew yet");
    }

    /** A figure of one's own over the one shown; a purchase or a note as it really was; else the variety. */
    private Optional<Layer> correction(State state, Optional<Variety> known) {
        Optional<Layer> figure = thing(state)
                .flatMap(VarietyFigures::of)
                .flatMap(name -> known.map(one -> Entry.figure("'" + one.name() + "'", name, "")));
        return figure.or(() -> purchase(state).map(bought -> Entry.correct(state, bought)))
                .or(() -> note(state).map(event -> Entry.correct(state, event)))
                .or(() -> known.map(one -> Entry.correct(state, one)));
    }

    private Offer said(State state, Offer offer) {
        boolean isFigure = thing(state).flatMap(VarietyFigures::of).isPresent();
        return offer.action() == Action.CORRECT && isFigure ? offer.saying("own figure") : offer;
    }

    @Override
    public Layer settled(State before, State after, Cause cause) {
        return new VarietyCard(
                variety,
                cursor.settled(rows(before), rows(after), cause, after.body().rows()));
    }
}
