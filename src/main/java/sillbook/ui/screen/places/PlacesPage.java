// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.season.PlaceNow;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Point;
import sillbook.ui.draw.Rect;
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
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.ListPane;
import sillbook.ui.screen.list.Rows;

/** Every place: what it serves, how full it is and will be; and under the list what stands at the cursor's. */
public record PlacesPage(Cursor cursor) implements Layer {
    public static final PlacesPage OPEN = new PlacesPage(Cursor.FIRST);

    private static final int HEADING_ROWS = 1;
    private static final int BLANK_ROWS = 1;

    @Override
    public Reach reach() {
        return Reach.PAGE;
    }

    private static Rows rows(State state) {
        return new PlaceRows(state).rows();
    }

    /** How many lines the list of places takes; what stands at one of them keeps its part of the body. */
    private static int listRows(State state, Size body) {
        int room = body.rows() - HEADING_ROWS;
        int places = state.almanac().places().size();
        return places == 0 ? room : Math.min(places, room - BLANK_ROWS - PlacePots.FEWEST_ROWS);
    }

    private static int listRows(State state) {
        return listRows(state, state.body());
    }

    @Override
    public Optional<Thing> thing(State state) {
        return cursor.thing(rows(state));
    }

    @Override
    public Layer at(State state, Thing thing) {
        return new PlacesPage(cursor.to(thing, rows(state), listRows(state)));
    }

    private Optional<PlaceNow> now(State state) {
        return thing(state).map(Thing.OfPlace.class::cast).flatMap(of -> PlaceRows.find(state, of.place()));
    }

    @Override
    public Look look(State state, Size body) {
        ListPane pane = new ListPane(rows(state), cursor);
        int listRows = listRows(state, body);
        Look look = Look.body((area, cells) -> render(state, pane, area, cells))
                .withPlace(pane.place(listRows))
                .withAside(now(state).map(new PlaceAside(state)::of).orElse(Aside.NONE))
                .withFoot(
                        Action.OPEN_PLACE,
                        Action.CHECK,
                        Action.NEW_PLACE,
                        Action.CORRECT,
                        Action.JOT,
                        Action.WRITE_LINE,
                        Action.WHY,
                        Action.TAKE_BACK,
                        Action.ANOTHER_DAY);
        return pane.point(listRows)
                .map(at -> look.withCursor(new Point(at.column(), at.row() + HEADING_ROWS)))
                .orElse(look);
    }

    private void render(State state, ListPane pane, Rect area, Cells cells) {
        Optional<PlaceNow> now = now(state);
        int listRows = listRows(state, area.size());
        if (now.isPresent()) {
            PlaceLine.heading(state.journal().settings().temperatures(), area.line(0), cells);
        }
        pane.render(area.lines(HEADING_ROWS, listRows), cells);
        Rect below = area.withoutTop(HEADING_ROWS + listRows + BLANK_ROWS);
        now.ifPresent(there -> new PlacePots(state, there).render(below, cells.within(below)));
    }

    @Override
    public List<Offer> offers(State state) {
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.byKey(
                Action.MOVE_CURSOR, key -> moved(state, cursor.pressed(key, rows(state), listRows(state)))));
        offers.add(
                Offer.of(Action.OPEN_PLACE, () -> card(state)).offIf(now(state).isEmpty(), "there is no place yet"));
        offers.addAll(new PlaceOffers(state, now(state)).offers());
        offers.addAll(new RulerKeys(state).offers());
        return offers;
    }

    private static Step moved(State state, Cursor to) {
        return Step.to(state.withTop(new PlacesPage(to)));
    }

    private Step card(State state) {
        return Step.to(now(state)
                .map(there -> state.laid(PlaceCard.of(there.place().id())))
                .orElse(state));
    }

    @Override
    public Layer settled(State before, State after, Cause cause) {
        return new PlacesPage(cursor.settled(rows(before), rows(after), cause, listRows(after)));
    }
}
