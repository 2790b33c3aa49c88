// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.util.List;
import sillbook.plan.Supplies;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.Find;
import sillbook.ui.screen.list.FindPane;
import sillbook.words.plan.SuppliesWords;

/** What a plan takes, and what of it is to be bought: by supplier, what is to be ordered soonest first. */
record SuppliesPage(Cursor cursor) implements Layer {
    static final SuppliesPage OPEN = new SuppliesPage(Cursor.FIRST);

    @Override
    public Reach reach() {
        return Reach.PAGE;
    }

    private static Supplies supplies(State state, Drawn drawn) {
        return state.almanac().plannings().supplies(drawn.plan(state));
    }

    private FindPane list(State state) {
        return list(state, PlanPage.beneath(state).drawn());
    }

    private FindPane list(State state, Drawn drawn) {
        SuppliesRows lines = new SuppliesRows(state, supplies(state, drawn));
        return new FindPane(Find.CLOSED, lines.rows(), cursor, List.of(SuppliesRows::heading));
    }

    @Override
    public Look look(State state, Size body) {
        FindPane list = list(state);
        Supplies supplies = supplies(state, PlanPage.beneath(state).drawn());
        Look look = Look.body(list)
                .withPlace("supplies, " + list.place(body.rows()))
                .withAside(Aside.of("To buy", new SuppliesWords(state.journal()).toBuy(supplies) + "."))
                .withFoot(Action.MOVE_CURSOR, Action.WRITE_LINE, Action.BACK, Action.KEYS);
        return list.point(body.rows()).map(look::withCursor).orElse(look);
    }

    @Override
    public List<Offer> offers(State state) {
        return List.of(Offer.moving(
                state,
                key -> new SuppliesPage(list(state).pressed(key, state.body().rows()))));
    }

    @Override
    public Layer settled(State before, State after, Cause cause) {
        FindPane list = list(after, PlanPage.beneath(after).drawn().in(after.journal()));
        return new SuppliesPage(
                cursor.to(cursor.at(), list.rows(), list.listRows(after.body().rows())));
    }
}
