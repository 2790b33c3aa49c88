// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.season.PlaceNow;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Keys;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Message;
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
public record PlacesPage(Cursor cursor, Find find, ChartSpan span) implements Searchable {
    public static final PlacesPage OPEN = new PlacesPage(Cursor.FIRST, Find.CLOSED, ChartSpan.SEASON);

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
        return new PlacesPage(to, find, span);
    }

    @Override
    public Layer finding(Find other) {
        return new PlacesPage(Cursor.FIRST, other, span);
    }

    /** How many rows the list takes with what stands over it; what is drawn of one of the places keeps its part of the body. */
    private int rowsTaken(State state, FindPane list, Size body) {
        if (list.rows().things().isEmpty()) {
            return body.rows();
        }
        int wanted = body.rows()
                - list.listRows(body.rows())
                + list.rows().scrolled().size();
        int below = cursor.thing(list.rows())
                .flatMap(Thing::asPlace)
                .flatMap(place -> PlaceRows.find(state, place))
                .map(there -> new PlaceBelow(state, there, span).fewestRows(body.columns()))
                .orElse(0);
        return Math.min(wanted, body.rows() - below);
    }

    @Override
    public Optional<Thing> thing(State state) {
        return cursor.thing(rows(state));
    }

    @Override
    public Layer at(State state, Thing thing) {
        PlacesPage all = new PlacesPage(cursor, Find.CLOSED, span);
        FindPane list = all.list(state);
        return all.at(list.to(thing, rowsTaken(state, list, state.body())));
    }

    private Optional<PlaceNow> now(State state) {
        return thing(state).flatMap(Thing::asPlace).flatMap(place -> PlaceRows.find(state, place));
    }

    @Override
    public Look look(State state, Size body) {
        FindPane list = list(state);
        int taken = rowsTaken(state, list, body);
        Look look = Look.body((area, cells) -> render(state, list, area, cells))
                .withTicks(ticks(state, body))
                .withPlace(place(state, list, taken))
                .withAside(now(state).map(new PlaceAside(state)::of).orElse(Aside.NONE))
                .withFoot(
                        Action.LIST_FOUND,
                        Action.OPEN_PLACE,
                        Action.CHECK,
                        Action.TAKE_READING,
                        Action.IMPORT_READINGS,
                        Action.ZOOM,
                        Action.WHY,
                        Action.NEW_PLACE,
                        Action.CORRECT,
                        Action.JOT,
                        Action.TAKE_BACK,
                        Action.ANOTHER_DAY,
                        Action.BACK);
        return list.point(taken).map(look::withCursor).orElse(look);
    }

    private Widget ticks(State state, Size body) {
        return now(state)
                .map(there -> new PlaceBelow(state, there, span).chart())
                .filter(chart -> chart.isShown(body.columns()))
                .map(PlaceChart::moves)
                .orElse((line, cells) -> {});
    }

    /** Which places are in sight, unless all are; the rule under the chart has other uses. */
    private static String place(State state, FindPane list, int taken) {
        boolean showsAll = list.listRows(taken) >= list.rows().scrolled().size();
        return showsAll && state.picked().isEmpty() ? "" : Picked.before(list.place(taken), state, list.rows());
    }

    private void render(State state, FindPane list, Rect area, Cells cells) {
        int taken = rowsTaken(state, list, area.size());
        list.render(area.lines(0, taken), cells);
        Rect below = area.withoutTop(taken);
        now(state).ifPresent(there -> new PlaceBelow(state, there, span).render(below, cells));
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
        offers.addAll(ofChart(state));
        offers.addAll(new PlaceOffers(state, now(state)).offers());
        offers.addAll(new RulerKeys(state).offers());
        return offers;
    }

    /** Where there is a chart its zoom comes before the ruler's; once it has an axis of its own, so do all that move it. */
    private List<Offer> ofChart(State state) {
        List<Offer> offers = new ArrayList<>();
        boolean hasChart = now(state)
                .map(there -> new PlaceBelow(state, there, span).chart())
                .filter(chart -> chart.isShown(state.body().columns()))
                .isPresent();
        if (hasChart) {
            offers.add(Offer.of(Action.ZOOM, () -> Step.to(state.withTop(with(span.nearer())))));
        }
        if (!span.isSeason()) {
            offers.add(Offer.byKey(
                    Action.PAN,
                    key -> Step.to(state.withTop(with(key.equals(Keys.LEFT) ? span.earlier() : span.later())))));
            offers.add(Offer.of(Action.TODAY_ON_RULER, () -> Step.to(state.withTop(with(span.unpanned())))));
            offers.add(Offer.of(Action.BACK, () -> Step.to(state.withTop(with(ChartSpan.SEASON))))
                    .saying("season"));
        }
        return offers;
    }

    private PlacesPage with(ChartSpan other) {
        return new PlacesPage(cursor, find, other);
    }

    private PlacesPage pressed(State state, Key key) {
        FindPane list = list(state);
        return at(list.pressed(key, rowsTaken(state, list, state.body())));
    }

    private Step card(State state) {
        return Step.to(now(state)
                .map(there -> state.laid(PlaceCard.of(there.place().id())))
                .orElse(state));
    }

    /** A near chart is read when it comes into sight; until then it is drawn by days. */
    @Override
    public Step onTop(State state) {
        return now(state)
                .flatMap(there -> span.toAsk(state, there.place().id()))
                .map(effect -> Step.to(state.withTop(with(span.asking(effect))), effect))
                .orElseGet(() -> Step.to(state));
    }

    @Override
    public Layer chartRead(Message.ChartRead answer) {
        return with(span.answered(answer));
    }

    @Override
    public Layer settled(State before, State after, Cause cause) {
        boolean isSame = before.journal().equals(after.journal());
        return isSame
                ? moved(before, after, cause)
                : moved(before, after, cause).with(span.stale());
    }

    private PlacesPage moved(State before, State after, Cause cause) {
        FindPane list = list(after);
        return at(list.settled(list(before), cause, rowsTaken(after, list, after.body())));
    }
}
