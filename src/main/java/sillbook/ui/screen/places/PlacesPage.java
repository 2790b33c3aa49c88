// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.season.PlaceNow;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Widget;
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
import sillbook.ui.screen.list.Find;
import sillbook.ui.screen.list.FindPane;
import sillbook.ui.screen.list.Picked;
import sillbook.ui.screen.list.Rows;
import sillbook.ui.screen.list.Searchable;

/** Every place: what it serves, how full it is and will be; and under the list what stands at the cursor's. */
public record PlacesPage(Cursor cursor, Find find) implements Searchable {
    public static final PlacesPage OPEN = new PlacesPage(Cursor.FIRST, Find.CLOSED);

    private static final int BLANK_ROWS = 1;

    private FindPane list(State state) {
        Rows all = new PlaceRows(state).rows();
        Widget heads =
                (line, cells) -> PlaceLine.heading(state.journal().settings().temperatures(), line, cells);
        return new FindPane(find, all, cursor, List.of(all.things().isEmpty() ? (line, cells) -> {} : heads));
    }

    private Rows rows(State state) {
        return list(state).rows();
    }

    private PlacesPage at(Cursor to) {
        return new PlacesPage(to, find);
    }

    @Override
    public Layer finding(Find other) {
        return new PlacesPage(Cursor.FIRST, other);
    }

    /** How many rows the list takes with what stands over it; what stands at one of the places keeps its part of the body. */
    private static int rowsTaken(FindPane list, Size body) {
        if (list.rows().things().isEmpty()) {
            return body.rows();
        }
        int wanted = body.rows()
                - list.listRows(body.rows())
                + list.rows().scrolled().size();
        return Math.min(wanted, body.rows() - BLANK_ROWS - PlacePots.FEWEST_ROWS);
    }

    @Override
    public Optional<Thing> thing(State state) {
        return cursor.thing(rows(state));
    }

    @Override
    public Layer at(State state, Thing thing) {
        PlacesPage all = new PlacesPage(cursor, Find.CLOSED);
        FindPane list = all.list(state);
        return all.at(list.to(thing, rowsTaken(list, state.body())));
    }

    private Optional<PlaceNow> now(State state) {
        return thing(state).flatMap(Thing::asPlace).flatMap(place -> PlaceRows.find(state, place));
    }

    @Override
    public Look look(State state, Size body) {
        FindPane list = list(state);
        int taken = rowsTaken(list, body);
        Look look = Look.body((area, cells) -> render(state, list, area, cells))
                .withPlace(Picked.before(list.place(taken), state, list.rows()))
                .withAside(now(state).map(new PlaceAside(state)::of).orElse(Aside.NONE))
                .withFoot(
                        Action.LIST_FOUND,
                        Action.OPEN_PLACE,
                        Action.CHECK,
                        Action.NEW_PLACE,
                        Action.CORRECT,
                        Action.JOT,
                        Action.WRITE_LINE,
                        Action.WHY,
                        Action.TAKE_BACK,
                        Action.ANOTHER_DAY,
                        Action.BACK);
        return list.point(taken).map(look::withCursor).orElse(look);
    }

    private void render(State state, FindPane list, Rect area, Cells cells) {
        int taken = rowsTaken(list, area.size());
        list.render(area.lines(0, taken), cells);
        Rect below = area.withoutTop(taken + BLANK_ROWS);
        now(state).ifPresent(there -> new PlacePots(state, there).render(below, cells.within(below)));
    }

    @Override
    public List<Offer> offers(State state) {
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.moving(state, key -> pressed(state, key)));
        offers.addAll(findOffers(state));
        if (find.isTyping()) {
            return offers;
        }
        offers.add(
                Offer.of(Action.OPEN_PLACE, () -> card(state)).offIf(now(state).isEmpty(), "there is no place yet"));
        offers.addAll(new PlaceOffers(state, now(state)).offers());
        offers.addAll(new RulerKeys(state).offers());
        return offers;
    }

    private PlacesPage pressed(State state, Key key) {
        FindPane list = list(state);
        return at(list.pressed(key, rowsTaken(list, state.body())));
    }

    private Step card(State state) {
        return Step.to(now(state)
                .map(there -> state.laid(PlaceCard.of(there.place().id())))
                .orElse(state));
    }

    @Override
    public Layer settled(State before, State after, Cause cause) {
        FindPane list = list(after);
        return at(list.settled(list(before), cause, rowsTaken(list, after.body())));
    }
}
