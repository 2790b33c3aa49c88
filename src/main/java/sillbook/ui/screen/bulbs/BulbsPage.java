// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.bulbs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Purchase;
import sillbook.model.Variety;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Widget;
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
import sillbook.ui.screen.list.Find;
import sillbook.ui.screen.list.FindPane;
import sillbook.ui.screen.list.Rows;
import sillbook.ui.screen.list.Searchable;

/** Every variety: what is in hand, how it did; or every purchase. */
public record BulbsPage(Cursor cursor, BulbsView view, Find find) implements Searchable {
    public static final BulbsPage OPEN = new BulbsPage(Cursor.FIRST, BulbsView.NAME, Find.CLOSED);

    private FindPane list(State state) {
        BulbsRows lines = new BulbsRows(state, view);
        Rows all = lines.rows();
        Widget heads = all.things().isEmpty() ? (line, cells) -> {} : lines::heading;
        return new FindPane(find, all, cursor, List.of(heads));
    }

    private Rows rows(State state) {
        return list(state).rows();
    }

    private BulbsPage at(Cursor to) {
        return new BulbsPage(to, view, find);
    }

    @Override
    public Layer finding(Find other) {
        return new BulbsPage(Cursor.FIRST, view, other);
    }

    /** The cursor keeps its variety, where it is in the other view too. */
    BulbsPage viewed(State state, BulbsView other) {
        BulbsPage top = new BulbsPage(Cursor.FIRST, other, find);
        return thing(state)
                .map(kept -> top.at(top.list(state).to(kept, state.body().rows())))
                .orElse(top);
    }

    @Override
    public Optional<Thing> thing(State state) {
        return cursor.thing(rows(state));
    }

    @Override
    public Layer at(State state, Thing thing) {
        BulbsPage all = new BulbsPage(cursor, BulbsView.NAME, Find.CLOSED);
        return all.at(all.list(state).to(thing, state.body().rows()));
    }

    private Optional<Purchase> purchase(State state) {
        return thing(state).flatMap(Thing::asPurchase).flatMap(state.journal().purchases()::find);
    }

    private Optional<Variety> variety(State state) {
        return purchase(state)
                .map(Purchase::variety)
                .or(() -> thing(state).flatMap(Thing::asVariety))
                .flatMap(state.journal().varieties()::find);
    }

    @Override
    public Look look(State state, Size body) {
        FindPane list = list(state);
        Look look = Look.body(list)
                .withPlace(view.words() + ", " + list.place(body.rows()))
                .withAside(aside(state))
                .withFoot(
                        Action.LIST_FOUND,
                        Action.ARRIVED,
                        Action.OPEN_VARIETY,
                        Action.NEW_VARIETY,
                        Action.NEW_PURCHASE,
                        Action.CHOOSE_VARIETY,
                        Action.VIEW,
                        Action.CORRECT,
                        Action.JOT,
                        Action.IMPORT_LIST,
                        Action.WRITE_LINE,
                        Action.BACK);
        return list.point(body.rows()).map(look::withCursor).orElse(look);
    }

    private Aside aside(State state) {
        return new BulbAside(state).of(purchase(state), variety(state));
    }

    @Override
    public List<Offer> offers(State state) {
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.moving(
                state, key -> at(list(state).pressed(key, state.body().rows()))));
        offers.addAll(findOffers(state));
        if (find.isTyping()) {
            return offers;
        }
        Optional<Variety> variety = variety(state);
        offers.add(purchase(state)
                .flatMap(bought -> BulbOffers.arrived(state, bought))
                .orElseGet(() -> Offer.of(
                                Action.OPEN_VARIETY,
                                () -> Step.to(variety.map(one -> state.laid(VarietyCard.of(one.id())))
                                        .orElse(state)))
                        .offIf(variety.isEmpty(), "there is no variety here")));
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
        return at(list(after).settled(list(before), cause, after.body().rows()));
    }
}
