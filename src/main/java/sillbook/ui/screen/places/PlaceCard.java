// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Event;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Purchase;
import sillbook.model.Trench;
import sillbook.season.PlaceNow;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.RulerKeys;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.act.Acts;
import sillbook.ui.screen.act.RemoveEntry;
import sillbook.ui.screen.card.PotCard;
import sillbook.ui.screen.entry.Entry;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.ListPane;
import sillbook.ui.screen.list.Picked;
import sillbook.ui.screen.list.Rows;
import sillbook.ui.screen.pot.DryBulbAside;
import sillbook.ui.screen.pot.PotAside;

/** The card of one place. Its cursor walks the place itself, the pots that stand there, and what was written of it. */
public record PlaceCard(Id<Place> place, Cursor cursor) implements Layer {

    /** The line that says how pots stand buried there. */
    static final Thing GROUND = new Thing.Named("ground");

    public static PlaceCard of(Id<Place> place) {
        return new PlaceCard(place, Cursor.FIRST);
    }

    @Override
    public Reach reach() {
        return Reach.PAGE;
    }

    private Optional<PlaceNow> now(State state) {
        return PlaceRows.find(state, place);
    }

    private Rows rows(State state) {
        return now(state).map(there -> new PlaceCardRows(state, there).rows()).orElse(Rows.of(List.of()));
    }

    @Override
    public Optional<Thing> thing(State state) {
        return cursor.thing(rows(state));
    }

    private Optional<Thing.OfPots> pots(State state) {
        return thing(state).flatMap(Thing::asPots);
    }

    private Optional<Event> entry(State state) {
        return thing(state).flatMap(Thing::asEvent).flatMap(state.journal().events()::find);
    }

    private Optional<Purchase> purchase(State state) {
        return thing(state).flatMap(Thing::asPurchase).flatMap(state.journal().purchases()::find);
    }

    @Override
    public Look look(State state, Size body) {
        Rows rows = rows(state);
        ListPane pane = new ListPane(rows, cursor);
        Look look = Look.body(pane)
                .withPlace(Picked.before(pane.place(body.rows()), state, rows))
                .withAside(aside(state))
                .withFoot(
                        Action.OPEN_CARD,
                        Action.MOVE,
                        Action.CHECK,
                        Action.TAKE_READING,
                        Action.IMPORT_READINGS,
                        Action.CORRECT,
                        Action.JOT,
                        Action.WHY,
                        Action.PICK,
                        Action.NEW_PLACE,
                        Action.BACK);
        return pane.point(body.rows()).map(look::withCursor).orElse(look);
    }

    private Aside aside(State state) {
        Optional<Aside> ofPots = pots(state).map(of -> new PotAside(state).of(of.first()));
        return ofPots.or(() -> ofBulbs(state))
                .or(() -> now(state).map(new PlaceAside(state)::of))
                .orElse(Aside.NONE);
    }

    /** Of the purchase under the cursor, while it waits. */
    private Optional<Aside> ofBulbs(State state) {
        Optional<Id<Purchase>> under = thing(state).flatMap(Thing::asPurchase);
        return now(state)
                .flatMap(there -> there.waiting().stream()
                        .filter(bulbs ->
                                under.equals(Optional.of(bulbs.purchase().id())))
                        .findFirst())
                .map(new DryBulbAside(state)::of);
    }

    @Override
    public List<Offer> offers(State state) {
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.moving(
                state,
                key -> new PlaceCard(
                        place, cursor.pressed(key, rows(state), state.body().rows()))));
        offers.addAll(ofLine(state));
        offers.addAll(new RulerKeys(state).offers());
        return offers;
    }

    /** On a pot its own acts; on an entry its correction; all else is about the place. */
    private List<Offer> ofLine(State state) {
        List<Offer> offers = new ArrayList<>();
        Optional<Thing.OfPots> pots = pots(state);
        if (pots.isPresent()) {
            Id<Pot> first = pots.get().first();
            offers.add(Offer.of(Action.OPEN_CARD, () -> Step.to(state.laid(PotCard.of(state, first)))));
            Acts acts = new Acts(state, Optional.of(pots.get()));
            offers.addAll(acts.offers());
            offers.add(acts.pickByRule(Picked.pots(rows(state))));
            return offers;
        }
        if (isGround(state)) {
            offers.addAll(ofGround(state));
            offers.addAll(new PlaceOffers(state, now(state)).offers());
            return offers;
        }
        new PlaceFiles(state, place)
                .under(thing(state))
                .map(file -> RemoveEntry.offer(state, Optional.of(file)))
                .ifPresent(offers::add);
        entry(state)
                .map(event -> correct(state, "correct entry", Entry.correct(state, event)))
                .or(() ->
                        purchase(state).map(bought -> correct(state, "correct purchase", Entry.correct(state, bought))))
                .ifPresent(offers::add);
        offers.addAll(new PlaceOffers(state, now(state)).offers());
        return offers;
    }

    private boolean isGround(State state) {
        return thing(state).filter(GROUND::equals).isPresent();
    }

    private List<Offer> ofGround(State state) {
        Optional<Trench> trench = state.journal().trench(place);
        Offer correct = correct(
                state,
                trench.isPresent() ? "correct ground" : "write ground",
                Entry.ground(state, state.journal().places().get(place)));
        return trench.isPresent() ? List.of(correct, RemoveEntry.offer(state, trench)) : List.of(correct);
    }

    private static Offer correct(State state, String words, Layer form) {
        return Offer.of(Action.CORRECT, () -> Step.to(state.laid(form)))
                .saying(words)
                .offIf(state.copy().isReadOnly(), "the journal is read only");
    }

    @Override
    public Layer settled(State before, State after, Cause cause) {
        return new PlaceCard(
                place,
                cursor.settled(rows(before), rows(after), cause, after.body().rows()));
    }
}
