// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.SeasonPlan;
import sillbook.plan.PlanNow;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.act.RemoveEntry;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.Find;
import sillbook.ui.screen.list.FindPane;
import sillbook.ui.screen.list.Rows;
import sillbook.words.plan.SuppliesWords;
import sillbook.words.plan.WishWords;

/** The plans of a season side by side, to choose one. It lies over the page of the plan. */
record PlansPage(Cursor cursor) implements Layer {
    static final PlansPage OPEN = new PlansPage(Cursor.FIRST);

    @Override
    public Reach reach() {
        return Reach.PAGE;
    }

    private static Drawn drawn(State state) {
        return PlanPage.beneath(state).drawn();
    }

    private FindPane list(State state) {
        return list(state, drawn(state));
    }

    private FindPane list(State state, Drawn drawn) {
        Widget title = (line, cells) -> cells.put(
                line.column() + 1,
                line.row(),
                "Plans of " + state.journal().nameOf(drawn.season(state)) + ", side by side",
                Style.BOLD);
        return new FindPane(
                Find.CLOSED, Rows.of(new PlanTable(state, drawn).rows()), cursor, List.of(title, PlanTable::heading));
    }

    private Optional<SeasonPlan> under(State state) {
        List<SeasonPlan> plans = new PlanTable(state, drawn(state)).plans();
        return cursor.at() < plans.size() ? Optional.of(plans.get(cursor.at())) : Optional.empty();
    }

    @Override
    public Optional<Thing> thing(State state) {
        return cursor.thing(list(state).rows());
    }

    @Override
    public Look look(State state, Size body) {
        FindPane list = list(state);
        Look look = Look.body(list)
                .withPlace(list.place(body.rows()))
                .withAside(under(state).map(plan -> aside(state, plan)).orElse(Aside.NONE))
                .withFoot(Action.AGREE, Action.REMOVE, Action.WRITE_LINE, Action.BACK);
        return list.point(body.rows()).map(look::withCursor).orElse(look);
    }

    /** How it stands to each wish, and what is to be bought for it. */
    private static Aside aside(State state, SeasonPlan plan) {
        PlanNow now = state.almanac().plannings().now(plan);
        WishWords words = new WishWords(state.journal());
        String wishes = String.join("; ", now.wishes().stream().map(words::says).toList());
        String toBuy = new SuppliesWords(state.journal())
                .toBuy(state.almanac().plannings().supplies(plan));
        return Aside.of("", wishes.isEmpty() ? "Nothing is wished for." : wishes, "To buy: " + toBuy);
    }

    @Override
    public List<Offer> offers(State state) {
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.moving(
                state,
                key -> new PlansPage(list(state).pressed(key, state.body().rows()))));
        offers.add(Offer.of(Action.AGREE, () -> show(state))
                .saying("show it")
                .offIf(under(state).isEmpty(), "there is no plan yet, K keeps one")
                .offIf(PlanPage.beneath(state).sought().isGoingOn(), SeekOffers.GOES_ON));
        offers.add(RemoveEntry.offer(
                state,
                under(state).flatMap(plan -> state.journal().seasonPlans().find(plan.id()))));
        return offers;
    }

    private Step show(State state) {
        SeasonPlan plan = under(state).orElseThrow();
        return Step.to(state.lifted().withTop(PlanPage.beneath(state).showing(plan)));
    }

    @Override
    public Layer settled(State before, State after, Cause cause) {
        FindPane list = list(after, drawn(after).in(after.journal()));
        return new PlansPage(
                cursor.to(cursor.at(), list.rows(), list.listRows(after.body().rows())));
    }
}
