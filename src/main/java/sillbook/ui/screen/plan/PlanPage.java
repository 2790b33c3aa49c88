// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.SeasonPlan;
import sillbook.plan.PlannedPot;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.Sill;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.PageName;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.Timescale;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.FindPane;
import sillbook.words.Counts;
import sillbook.words.plan.SeekingWords;

/**
 * What should flower when: so many pots every so many days, or a ribbon under the months. What is changed here is shown at once, and is in
 * the journal only when it is kept.
 *
 * @param typed the fields of the hand rule while they are typed in
 */
public record PlanPage(Drawn drawn, boolean isRibbon, Cursor cursor, Optional<RuleTyped> typed, Sought sought)
        implements Layer {
    public static final PlanPage OPEN =
            new PlanPage(Drawn.NOTHING, false, Cursor.FIRST, Optional.empty(), Sought.NOTHING);

    /** The page that a card or a list lies over. */
    static PlanPage beneath(State state) {
        return (PlanPage) state.layers().page();
    }

    @Override
    public Reach reach() {
        return typed.isPresent() ? Reach.FIELD : Reach.PAGE;
    }

    PlanPage with(Drawn other) {
        return new PlanPage(other, isRibbon, cursor, typed, sought);
    }

    PlanPage at(Cursor to) {
        return new PlanPage(drawn, isRibbon, to, typed, sought.seen());
    }

    PlanPage typing(Optional<RuleTyped> fields) {
        return new PlanPage(drawn, isRibbon, cursor, fields, sought);
    }

    PlanPage seeking(Sought other) {
        return new PlanPage(drawn, isRibbon, cursor, typed, other);
    }

    PlanPage turnedOver() {
        return new PlanPage(drawn, !isRibbon, cursor, Optional.empty(), sought);
    }

    /** The plan shown made another. */
    PlanPage changed(SeasonPlan plan) {
        return new PlanPage(drawn.changed(plan), isRibbon, cursor, typed, sought.seen());
    }

    /** One of the plans there are shown, its first pot under the cursor. */
    PlanPage showing(SeasonPlan plan) {
        return with(drawn.showing(plan)).at(Cursor.FIRST);
    }

    FindPane list(State state) {
        Size body = state.body();
        return isRibbon
                ? new RibbonView(
                                state, drawn, drawn.now(state), timescale(state).ruler(state, body.columns()), body)
                        .list(cursor)
                : new HandView(state, drawn.now(state), typed).list(cursor);
    }

    /** Which pot of the plan the cursor stands on. */
    Optional<Integer> under(State state) {
        return Optional.of(cursor.at())
                .filter(at -> at < drawn.now(state).pots().size());
    }

    @Override
    public Optional<Thing> thing(State state) {
        return cursor.thing(list(state).rows());
    }

    @Override
    public Timescale timescale(State state) {
        return state.timescale().over(drawn.season(state));
    }

    /** What has flowered, and what would by the plan. */
    @Override
    public Sill sill(State state) {
        List<DaySpan> happened = state.almanac().sill(drawn.season(state)).happened();
        Stream<DaySpan> planned = drawn.now(state).pots().stream().map(PlannedPot::inFlower);
        return new Sill(happened, DaySpan.joined(planned.toList()));
    }

    @Override
    public Look look(State state, Size body) {
        return new PlanLook(this, state, body).look();
    }

    @Override
    public Optional<Step> type(State state, Key key) {
        return typed.flatMap(fields -> fields.press(key)).map(fields -> typed(state, fields));
    }

    @Override
    public Step paste(State state, String text) {
        return typed.map(fields -> typed(state, fields.insert(text))).orElseGet(() -> Step.to(state));
    }

    /** A rule that makes sense is followed at once. */
    private Step typed(State state, RuleTyped fields) {
        PlanPage typing = typing(Optional.of(fields));
        SeasonPlan plan = drawn.plan(state);
        return Step.to(state.withTop(RuleTexts.in(state, drawn)
                .read(fields.texts(), plan.rule())
                .value()
                .filter(rule -> !rule.equals(plan.rule()))
                .map(rule -> typing.changed(drawn.byHand(state, rule)).at(Cursor.FIRST))
                .orElse(typing)));
    }

    @Override
    public List<Offer> offers(State state) {
        return typed.isPresent() ? new RuleOffers(this, state).offers() : new PlanOffers(this, state).offers();
    }

    @Override
    public Layer foundSoFar(Message.FoundSoFar answer) {
        return sought.from()
                .filter(from -> sought.isTurn(answer.turn()))
                .<Layer>map(from -> changed(Sought.plan(from, answer.found())).seeking(sought.found(answer.found())))
                .orElse(this);
    }

    @Override
    public Layer sought(Message.Sought answer) {
        if (!sought.isTurn(answer.turn())) {
            return this;
        }
        Sought over = sought.ended(answer.outcome());
        SeasonPlan from = sought.from().orElseThrow();
        return over.best()
                .map(found -> changed(Sought.plan(from, found)))
                .orElse(this)
                .seeking(over);
    }

    /** The cursor on its line, as long as there is one; what came of the search is still to be seen. */
    PlanPage settled(State state) {
        FindPane list = list(state);
        Cursor there =
                cursor.to(cursor.at(), list.rows(), list.listRows(state.body().rows()));
        return new PlanPage(drawn, isRibbon, there, typed, sought);
    }

    @Override
    public Optional<String> unkept(State state) {
        List<String> seasons = drawn.unkept(state.journal()).stream()
                .map(state.journal()::nameOf)
                .toList();
        return seasons.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "the plan" + (seasons.size() == 1 ? "" : "s") + " of " + Counts.and(seasons) + " as drawn");
    }

    @Override
    public Optional<String> goesOn() {
        return sought.isGoingOn() ? Optional.of(SeekingWords.GOES_ON) : Optional.empty();
    }

    @Override
    public Optional<Effect> overtaken(State before, State after) {
        return sought.isOvertaken(before, after)
                ? Optional.of(new Effect.StopSeeking(sought.turn()))
                : Optional.empty();
    }

    /** Nothing is planned anew for a page that is not open, nor for a cursor that stays at the top. */
    @Override
    public Layer settled(State before, State after, Cause cause) {
        boolean isSame = before.journal().equals(after.journal());
        PlanPage still = isSame ? this : with(drawn.in(after.journal())).seeking(sought.after(before, after));
        boolean isAside = cursor.at() == 0 || after.layers().open() != PageName.PLAN;
        return isAside ? still : still.settled(after);
    }
}
