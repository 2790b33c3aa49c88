// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.bulbs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Purchase;
import sillbook.model.Variety;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Point;
import sillbook.ui.draw.Rect;
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
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.ListPane;
import sillbook.ui.screen.list.Rows;

/** Every variety: what is in hand, how it did; or every purchase. */
public record BulbsPage(Cursor cursor, BulbsView view) implements Layer {
    public static final BulbsPage OPEN = new BulbsPage(Cursor.FIRST, BulbsView.NAME);

    private static final int HEADING_ROWS = 1;

    @Override
    public Reach reach() {
        return Reach.PAGE;
    }

    private BulbsRows lines(State state) {
        return new BulbsRows(state, view);
    }

    private Rows rows(State state) {
        return lines(state).rows();
    }

    private static int listRows(Size body) {
        return body.rows() - HEADING_ROWS;
    }

    /** The cursor keeps its variety, where it is in the other view too. */
    BulbsPage viewed(State state, BulbsView other) {
        BulbsPage top = new BulbsPage(Cursor.FIRST, other);
        return thing(state)
                .map(kept -> new BulbsPage(Cursor.FIRST.to(kept, top.rows(state), listRows(state.body())), other))
                .orElse(top);
    }

    @Override
    public Optional<Thing> thing(State state) {
        return cursor.thing(rows(state));
    }

    @Override
    public Layer at(State state, Thing thing) {
        return new BulbsPage(cursor.to(thing, rows(state), listRows(state.body())), view);
    }

    private Optional<Purchase> purchase(State state) {
        return thing(state)
                .filter(Thing.OfPurchase.class::isInstance)
                .map(Thing.OfPurchase.class::cast)
                .flatMap(of -> state.journal().purchases().find(of.purchase()));
    }

    private Optional<Variety> variety(State state) {
        return purchase(state)
                .map(Purchase::variety)
                .or(() -> thing(state)
                        .filter(Thing.OfVariety.class::isInstance)
                        .map(Thing.OfVariety.class::cast)
                        .map(Thing.OfVariety::variety))
                .flatMap(state.journal().varieties()::find);
    }

    @Override
    public Look look(State state, Size body) {
        Rows rows = rows(state);
        ListPane pane = new ListPane(rows, cursor);
        Look look = Look.body((area, cells) -> render(state, rows, area, cells))
                .withPlace(view.words() + ", " + pane.place(listRows(body)))
                .withAside(aside(state))
                .withFoot(
                        Action.OPEN_VARIETY,
                        Action.NEW_VARIETY,
                        Action.NEW_PURCHASE,
                        Action.CORRECT,
                        Action.JOT,
                        Action.VIEW,
                        Action.WRITE_LINE);
        return pane.point(listRows(body))
                .map(at -> look.withCursor(new Point(at.column(), at.row() + HEADING_ROWS)))
                .orElse(look);
    }

    private void render(State state, Rows rows, Rect area, Cells cells) {
        if (!rows.things().isEmpty()) {
            lines(state).heading(area.line(0), cells);
        }
        new ListPane(rows, cursor).render(area.withoutTop(HEADING_ROWS), cells);
    }

    private Aside aside(State state) {
        BulbAside aside = new BulbAside(state);
        return purchase(state)
                .map(aside::of)
                .or(() -> variety(state).map(aside::of))
                .orElse(Aside.NONE);
    }

    @Override
    public List<Offer> offers(State state) {
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.byKey(
                Action.MOVE_CURSOR,
                key -> Step.to(
                        state.withTop(new BulbsPage(cursor.pressed(key, rows(state), listRows(state.body())), view)))));
        Optional<Variety> variety = variety(state);
        offers.add(Offer.of(
                        Action.OPEN_VARIETY,
                        () -> Step.to(variety.map(one -> state.laid(VarietyCard.of(one.id())))
                                .orElse(state)))
                .offIf(variety.isEmpty(), "there is no variety here"));
        Optional<Layer> correction = purchase(state)
                .map(bought -> Entry.correct(state, bought))
                .or(() -> variety.map(one -> Entry.correct(state, one)));
        offers.addAll(new BulbOffers(state, thing(state), variety, correction).offers());
        offers.add(Offer.of(Action.VIEW, () -> Step.to(state.laid(new ViewChoice(this)))));
        return offers;
    }

    /** At its top it stays there, and no record need be read for it. */
    @Override
    public Layer settled(State before, State after, Cause cause) {
        if (cursor.at() == 0) {
            return this;
        }
        return new BulbsPage(cursor.settled(rows(before), rows(after), cause, listRows(after.body())), view);
    }
}
