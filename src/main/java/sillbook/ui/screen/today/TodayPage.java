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
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.act.Acts;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.Find;
import sillbook.ui.screen.list.FindPane;
import sillbook.ui.screen.list.Picked;
import sillbook.ui.screen.list.Rows;
import sillbook.ui.screen.list.Searchable;
import sillbook.ui.screen.pot.PotAside;
import sillbook.ui.screen.why.WhySlip;
import sillbook.words.GroundJobWords;

/** What is to be done today, and what is coming. */
public record TodayPage(Cursor cursor, Find find) implements Searchable {
    public static final TodayPage OPEN = new TodayPage(Cursor.FIRST, Find.CLOSED);

    private FindPane list(State state, Size body) {
        return FindPane.of(find, new TodayRows(state, body).rows(), cursor);
    }

    private FindPane list(State state) {
        return list(state, state.body());
    }

    private Rows rows(State state) {
        return list(state).rows();
    }

    private TodayPage at(Cursor to) {
        return new TodayPage(to, find);
    }

    @Override
    public Layer finding(Find other) {
        return new TodayPage(Cursor.FIRST, other);
    }

    @Override
    public Optional<Thing> thing(State state) {
        return cursor.thing(rows(state));
    }

    @Override
    public Look look(State state, Size body) {
        FindPane list = list(state, body);
        Look look = Look.body((area, cells) -> render(state, list, area, cells))
                .withPlace(Picked.before(list.place(body.rows()), state, list.rows()))
                .withAside(aside(state))
                .withFoot(
                        Action.LIST_FOUND,
                        Action.DO_JOB,
                        Action.ANOTHER_DAY,
                        Action.WRITE_LINE,
                        Action.CHECK,
                        Action.WHY,
                        Action.TAKE_BACK,
                        Action.MOVE,
                        Action.OUTCOME,
                        Action.PICK,
                        Action.PICK_BY_RULE,
                        Action.BACK);
        return list.point(body.rows()).map(look::withCursor).orElse(look);
    }

    private Aside aside(State state) {
        if (thing(state).orElse(null) instanceof Thing.OfGround of) {
            List<String> steps = GroundJobWords.steps(of.job());
            return Aside.of("", steps.get(0), steps.get(1));
        }
        return thing(state).flatMap(new OrderRows(state)::aside).orElseGet(() -> new PotAside(state).of(thing(state)));
    }

    private static void render(State state, FindPane pane, Rect area, Cells cells) {
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
        offers.add(Offer.moving(
                state, key -> at(list(state).pressed(key, state.body().rows()))));
        offers.addAll(findOffers(state));
        if (find.isTyping()) {
            return offers;
        }
        Acts acts = new Acts(state, thing(state));
        offers.add(dailyCare(state)
                .filter(care ->
                        thing(state).filter(TodayRows.DAILY_CARE::equals).isPresent())
                .map(care -> acts.doRound(care.pots()))
                .orElseGet(acts::doJob));
        offers.addAll(acts.offers(whyOfPlaces(state).orElseGet(acts::why)));
        offers.add(acts.pickByRule(Picked.pots(rows(state))));
        return offers;
    }

    /** On the line of places the first of them is explained, the gravest. */
    private Optional<Offer> whyOfPlaces(State state) {
        return thing(state)
                .filter(PinnedRows.PLACES::equals)
                .flatMap(places -> state.almanac().today().places().stream().findFirst())
                .map(gravest -> WhySlip.ofPlace(state, state.journal().places().find(gravest.place())));
    }

    private static Optional<Job.DailyCare> dailyCare(State state) {
        return state.almanac().today().dailyCare();
    }

    @Override
    public Layer settled(State before, State after, Cause cause) {
        return at(list(after).settled(list(before), cause, after.body().rows()));
    }
}
