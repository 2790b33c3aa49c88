// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.util.List;
import sillbook.model.SeasonPlan;
import sillbook.plan.PlanNow;
import sillbook.ui.draw.Point;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.State;
import sillbook.ui.screen.list.FindPane;
import sillbook.words.Counts;

/** How the page of the plan shows itself. */
record PlanLook(PlanPage page, State state, Size body) {

    Look look() {
        PlanNow now = page.drawn().now(state);
        FindPane list = page.list(state);
        Look look = Look.body(list)
                .withPlace(place(list))
                .withAside(new PlanAside(page, state, now).of(page.under(state)))
                .withFoot(foot());
        return page.typed()
                .flatMap(fields -> new RuleLine(now.plan().rule(), page.typed()).cursor())
                .or(() -> list.point(body.rows()))
                .map((Point at) -> look.withCursor(at))
                .orElse(look);
    }

    /** {@code plan A of 2, 14 pots, 7-13}: where the list goes on out of sight, which of it is in sight. */
    private String place(FindPane list) {
        SeasonPlan plan = page.drawn().plan(state);
        int pots = plan.pots().size();
        boolean isWhole = list.listRows(body.rows())
                >= list.rows().scrolled().size() + list.rows().pinned().size();
        String inSight =
                pots == 0 || isWhole ? "" : ", " + list.place(body.rows()).replaceFirst(" of .*", "");
        return name(plan) + ", " + Counts.of(pots, "pot") + inSight;
    }

    private String name(SeasonPlan plan) {
        if (page.drawn().isKept(state)) {
            String adopted = plan.adopted().isPresent() ? ", adopted" : "";
            return "plan " + plan.name() + " of " + page.drawn().kept(state).size() + adopted;
        }
        return plan.search().isPresent() ? "as found, not kept" : "by hand";
    }

    private Action[] foot() {
        List<Action> foot = page.typed().isPresent()
                ? List.of(Action.NEXT_BLANK, Action.RECORD, Action.BACK, Action.KEYS)
                : List.of(
                        Action.OPEN_PLANNED,
                        Action.NUDGE_DAY,
                        Action.RULE_FIELDS,
                        Action.SEEK_BEST,
                        Action.VIEW,
                        Action.KEEP_PLAN,
                        Action.ADOPT_PLAN,
                        Action.PLAN_POT,
                        Action.PLAN_WISH,
                        Action.WHY,
                        Action.PLANS,
                        Action.SUPPLIES,
                        Action.NUDGE_WEEK,
                        Action.WRITE_LINE,
                        Action.KEYS);
        return foot.toArray(Action[]::new);
    }
}
