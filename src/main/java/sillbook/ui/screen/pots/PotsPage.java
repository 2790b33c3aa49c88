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
import sillbook.ui.screen.list.Find;
import sillbook.ui.screen.list.FindPane;
import sillbook.ui.screen.list.Picked;
import sillbook.ui.screen.list.Rows;
import sillbook.ui.screen.list.Searchable;
import sillbook.ui.screen.pot.PotAside;

/** Every pot and batch of a season, one line each under the months. */
public record PotsPage(Cursor cursor, PotOrder order, Find find) implements Searchable {
    public static final PotsPage OPEN = new PotsPage(Cursor.FIRST, PotOrder.NEXT_MOVE, Find.CLOSED);

    private FindPane list(State state) {
        return FindPane.of(find, new PotRows(state, order).rows(), cursor);
    }

    private Rows rows(State state) {
        return list(state).rows();
    }

    private PotsPage at(Cursor to) {
        return new PotsPage(to, order, find);
    }

    PotsPage in(PotOrder other) {
        return new PotsPage(cursor, other, find);
    }

    @Override
    public Layer finding(Find other) {
        return new PotsPage(Cursor.FIRST, order, other);
    }

    @Override
    public Optional<Thing> thing(State state) {
        return cursor.thing(rows(state));
    }

    @Override
    public Layer at(State state, Thing thing) {
        PotsPage all = new PotsPage(cursor, order, Find.CLOSED);
        return all.at(all.list(state).to(thing, state.body().rows()));
    }

    @Override
    public Look look(State state, Size body) {
        FindPane list = list(state);
        boolean isEmpty = list.rows().things().isEmpty();
        Look look = Look.body(list)
                .withPlace(Picked.before(
                        isEmpty ? "none of 0" : order.words() + ", " + list.place(body.rows()), state, list.rows()))
                .withAside(new PotAside(state).of(thing(state)))
                .withFoot(
                        Action.LIST_FOUND,
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
                        Action.SAME_AGAIN,
                        Action.PICK_BY_RULE,
                        Action.BACK);
        return list.point(body.rows()).map(look::withCursor).orElse(look);
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
        offers.add(Offer.of(Action.OPEN_CARD, () -> card(state))
                .offIf(thing(state).isEmpty(), "there is no pot in this season"));
        Acts acts = new Acts(state, thing(state));
        offers.addAll(acts.offers());
        offers.add(acts.pickByRule(Picked.pots(rows(state))));
        offers.addAll(new RulerKeys(state).offers());
        offers.add(Offer.of(Action.VIEW, () -> Step.to(state.laid(new OrderChoice(this)))));
        return offers;
    }

    private Step card(State state) {
        return thing(state)
                .flatMap(Thing::asPots)
                .map(pots -> Step.to(state.laid(PotCard.of(state, pots.first()))))
                .orElseGet(() -> Step.to(state));
    }

    @Override
    public Layer settled(State before, State after, Cause cause) {
        return at(list(after).settled(list(before), cause, after.body().rows()));
    }
}
