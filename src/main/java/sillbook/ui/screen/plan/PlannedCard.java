// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.chart.RulerLayout;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Proposal.Course;
import sillbook.model.SeasonPlan;
import sillbook.plan.Nudge;
import sillbook.plan.PlanNow;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.Find;
import sillbook.ui.screen.list.FindPane;
import sillbook.words.plan.PlanNames;

/**
 * A proposed pot: its line under the months, its days, and the places it could stand at. It lies over the page of the plan and changes the
 * plan there.
 *
 * @param number of the pot in the plan, from 0
 */
record PlannedCard(int number, Cursor cursor) implements Layer {
    static PlannedCard of(int number) {
        return new PlannedCard(number, Cursor.FIRST);
    }

    @Override
    public Reach reach() {
        return Reach.PAGE;
    }

    private static PlanPage page(State state) {
        return PlanPage.beneath(state);
    }

    private PlannedCardRows rows(State state) {
        PlanPage page = page(state);
        RulerLayout ruler = page.timescale(state).ruler(state, state.body().columns());
        return new PlannedCardRows(state, page.drawn(), ruler, number);
    }

    private FindPane list(State state) {
        PlanNow now = page(state).drawn().now(state);
        PlanNames names = new PlanNames(state.journal(), now.plan());
        String whole = number < now.pots().size() ? names.mark(number) + " " + names.content(number) : "It is gone";
        return new FindPane(
                Find.CLOSED,
                rows(state).rows(),
                cursor,
                List.of((line, cells) -> cells.put(line.column() + 1, line.row(), whole, Style.BOLD)));
    }

    @Override
    public Optional<Thing> thing(State state) {
        return cursor.thing(list(state).rows());
    }

    @Override
    public Look look(State state, Size body) {
        FindPane list = list(state);
        PlanPage page = page(state);
        Look look = Look.body(list)
                .withPlace("pot " + (number + 1) + " of "
                        + page.drawn().plan(state).pots().size())
                .withAside(new PlanAside(page, state, page.drawn().now(state)).of(Optional.of(number)))
                .withFoot(Action.AGREE, Action.NUDGE_DAY, Action.NUDGE_WEEK, Action.NEXT_POT, Action.BACK);
        return list.point(body.rows()).map(look::withCursor).orElse(look);
    }

    @Override
    public List<Offer> offers(State state) {
        List<Offer> offers = new ArrayList<>();
        int last = page(state).drawn().plan(state).pots().size() - 1;
        offers.add(Offer.byKey(
                Action.NEXT_POT,
                key -> Step.to(state.withTop(of(Math.max(
                        0, Math.min(last, number + (key.words().equals("PgDn") ? 1 : -1))))))));
        offers.add(Offer.moving(
                state,
                key -> new PlannedCard(
                        number, list(state).pressed(key, state.body().rows()))));
        offers.add(Offer.of(Action.AGREE, () -> stand(state))
                .saying("stand it there")
                .offIf(thing(state).isEmpty(), "there is no place to choose")
                .offIf(page(state).sought().isGoingOn(), SeekOffers.GOES_ON));
        new PlanOffers(page(state).at(page(state).cursor().on(number)), state)
                .nudges(this::changing)
                .forEach(offers::add);
        return offers;
    }

    /** The plan beneath made another. */
    private State changing(State state, PlanPage changed) {
        return state.lifted().withTop(changed).laid(this);
    }

    /** The days stay, and its potting day goes with the place. */
    private Step stand(State state) {
        PlanPage page = page(state);
        SeasonPlan plan = page.drawn().plan(state);
        return Step.to(thing(state)
                .flatMap(rows(state)::course)
                .map(course -> Nudge.by(page.drawn().planning(state), Nudge.at(plan, number, course), number, 0))
                .map(moved -> changing(state, page.changed(moved)))
                .orElse(state));
    }

    /** Gone with its pot, where the plan has fewer now. */
    @Override
    public Layer settled(State before, State after, Cause cause) {
        int last = page(after).drawn().in(after.journal()).plan(after).pots().size() - 1;
        return new PlannedCard(Math.max(0, Math.min(number, last)), cursor);
    }

    /** With its cold at another place. */
    static Course cold(Course course, Id<Place> place) {
        return new Course(course.potting(), Optional.of(place), course.in(), course.room());
    }

    /** In flower at another place. */
    static Course room(Course course, Id<Place> place) {
        return new Course(course.potting(), course.cold(), course.in(), Optional.of(place));
    }
}
