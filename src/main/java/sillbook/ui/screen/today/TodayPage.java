// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.today;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.season.Job;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.act.Acts;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.ListPane;
import sillbook.ui.screen.list.Rows;
import sillbook.ui.screen.pot.PotAside;

/** What is to be done today, and what is coming. */
public record TodayPage(Cursor cursor) implements Layer {
    public static final TodayPage OPEN = new TodayPage(Cursor.FIRST);

    @Override
    public Reach reach() {
        return Reach.PAGE;
    }

    private static Rows rows(State state, Size body) {
        return new TodayRows(state, body).rows();
    }

    private static Rows rows(State state) {
        return rows(state, state.body());
    }

    @Override
    public Optional<Thing> thing(State state) {
        return cursor.thing(rows(state));
    }

    @Override
    public Look look(State state, Size body) {
        Rows rows = rows(state, body);
        ListPane pane = new ListPane(rows, cursor);
        Look look = Look.body((area, cells) -> render(state, pane, area, cells))
                .withPlace(pane.place(body.rows()))
                .withAside(new PotAside(state).of(thing(state)))
                .withFoot(
                        Action.DO_JOB,
                        Action.ANOTHER_DAY,
                        Action.WRITE_LINE,
                        Action.CHECK,
                        Action.WHY,
                        Action.TAKE_BACK,
                        Action.MOVE,
                        Action.OUTCOME,
                        Action.PICK);
        return pane.point(body.rows()).map(look::withCursor).orElse(look);
    }

    private static void render(State state, ListPane pane, Rect area, Cells cells) {
        Rect list = area.columns(0, TodayRows.COLUMNS);
        pane.render(list, cells.within(list));
        Rect margin = area.columns(TodayMargin.COLUMN, TodayMargin.COLUMNS);
        if (TodayMargin.fits(area.size())) {
            new TodayMargin(state).render(margin, cells.within(margin));
        }
    }

    @Override
    public List<Offer> offers(State state) {
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.byKey(
                Action.MOVE_CURSOR,
                key -> moved(
                        state, cursor.pressed(key, rows(state), state.body().rows()))));
        Acts acts = new Acts(state, thing(state));
        offers.add(dailyCare(state)
                .filter(care ->
                        thing(state).filter(TodayRows.DAILY_CARE::equals).isPresent())
                .map(care -> acts.doRound(care.pots()))
                .orElseGet(acts::doJob));
        offers.addAll(acts.offers());
        return offers;
    }

    private static Optional<Job.DailyCare> dailyCare(State state) {
        return state.almanac().today().dailyCare();
    }

    private static Step moved(State state, Cursor cursor) {
        return Step.to(state.withTop(new TodayPage(cursor)));
    }

    @Override
    public Layer settled(State before, State after, Cause cause) {
        Size body = after.body();
        return new TodayPage(cursor.settled(rows(before), rows(after, body), cause, body.rows()));
    }
}
