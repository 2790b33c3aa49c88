// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.pots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.RulerKeys;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.act.Acts;
import sillbook.ui.screen.card.PotCard;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.ListPane;
import sillbook.ui.screen.list.Rows;
import sillbook.ui.screen.pot.PotAside;

/** Every pot and batch of a season, one line each under the months. */
public record PotsPage(Cursor cursor, PotOrder order) implements Layer {
    public static final PotsPage OPEN = new PotsPage(Cursor.FIRST, PotOrder.NEXT_MOVE);

    @Override
    public Reach reach() {
        return Reach.PAGE;
    }

    private Rows rows(State state) {
        return new PotRows(state, order).rows();
    }

    @Override
    public Optional<Thing> thing(State state) {
        return cursor.thing(rows(state));
    }

    @Override
    public Layer at(State state, Thing thing) {
        return new PotsPage(cursor.to(thing, rows(state), state.body().rows()), order);
    }

    @Override
    public Look look(State state, Size body) {
        Rows rows = rows(state);
        ListPane pane = new ListPane(rows, cursor);
        String place = rows.things().isEmpty() ? "none of 0" : order.words() + ", " + pane.place(body.rows());
        Look look = Look.body(pane)
                .withPlace(place)
                .withAside(new PotAside(state).of(thing(state)))
                .withFoot(
                        Action.OPEN_CARD,
                        Action.MOVE,
                        Action.CHECK,
                        Action.WRITE_LINE,
                        Action.PICK,
                        Action.VIEW,
                        Action.ZOOM,
                        Action.NEW_POT,
                        Action.ANOTHER_DAY,
                        Action.JOT,
                        Action.SAME_AGAIN);
        return pane.point(body.rows()).map(look::withCursor).orElse(look);
    }

    @Override
    public List<Offer> offers(State state) {
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.byKey(
                Action.MOVE_CURSOR,
                key -> moved(
                        state, cursor.pressed(key, rows(state), state.body().rows()))));
        offers.add(Offer.of(Action.OPEN_CARD, () -> card(state))
                .offIf(thing(state).isEmpty(), "there is no pot in this season"));
        offers.addAll(new Acts(state, thing(state)).offers());
        offers.addAll(new RulerKeys(state).offers());
        offers.add(Offer.of(Action.VIEW, () -> Step.to(state.laid(new OrderChoice(this)))));
        return offers;
    }

    private Step moved(State state, Cursor to) {
        return Step.to(state.withTop(new PotsPage(to, order)));
    }

    private Step card(State state) {
        return thing(state)
                .filter(Thing.OfPots.class::isInstance)
                .map(Thing.OfPots.class::cast)
                .map(pots -> Step.to(state.laid(PotCard.of(state, pots.pots().get(0)))))
                .orElseGet(() -> Step.to(state));
    }

    @Override
    public Layer settled(State before, State after, Cause cause) {
        return new PotsPage(
                cursor.settled(rows(before), rows(after), cause, after.body().rows()), order);
    }
}
