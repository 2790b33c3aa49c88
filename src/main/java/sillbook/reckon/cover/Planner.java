// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.List;
import sillbook.reckon.cover.Stage.Goal;

/**
 * Looks for the days to bring pots in, so that as few pots as possible lack for wishes; of such plans one with the fewest days without bloom; of such one with the fewest pots; of such one with the least overlap. Goal after goal
 * it bounds what can be had ({@link Relaxation}), then sweeps the season with ever more beginnings of plans ({@link Sweep}), until the best found is proven or the effort is spent. The same task and effort give the same plan.
 */
public final class Planner {
    /** About five to ten seconds' work, in ways weighed. */
    public static final long USUAL_EFFORT = 150_000_000;

    private static final int[] NARROW = {1, 12};
    private static final int[] WIDE = {40, 400, 4_000, 20_000};
    private static final List<Goal> GOALS = List.of(Goal.values());
    private static final double[] PARTS = {.3, .6, .85, 1};

    private final Ways ways;
    private final Effort effort;
    private final Best best;
    private final Fixed none;

    private Planner(Task task, List<Pull> fixed, long effort, Watch watch) {
        this.ways = new Ways(task, fixed);
        this.effort = new Effort(effort, watch);
        this.best = new Best(ways, watch);
        this.none = Fixed.none(ways);
    }

    /** The usual effort, with nobody looking. */
    public static Plan plan(Task task) {
        return plan(task, USUAL_EFFORT, Watch.PATIENT);
    }

    /** At most so much effort, in ways weighed; the best so far when it is spent or the watch wants it to stop. */
    public static Plan plan(Task task, long effort, Watch watch) {
        return plan(task, List.of(), effort, watch);
    }

    /**
     * The same where some pots are in already, or are to come in on a day that is not to be moved. They are in every plan, count as used, and may stand outside their days and where there is no room for them: nothing else then comes
     * to that place on those days.
     *
     * @param fixed no more of a group than it has pots
     */
    public static Plan plan(Task task, List<Pull> fixed, long effort, Watch watch) {
        return new Planner(task, fixed, effort, watch).seek();
    }

    private Plan seek() {
        int goal = 0;
        while (goal < GOALS.size()) {
            Tally before = best.tally();
            Stage stage = new Stage(GOALS.get(goal), before, ways.given());
            settle(stage, new Allowance(effort, PARTS[goal]));
            boolean stands = stage.isLimitOf(best.tally());
            goal = stands ? goal + 1 : 0;
        }
        return best.plan();
    }

    private void settle(Stage stage, Allowance allowance) {
        Worth worth = new Worth(ways, stage);
        Relaxation relaxation = new Relaxation(ways, stage, Prices.none(ways), none);
        prove(stage, Rounding.up(relaxation.bound()));
        for (int width : NARROW) {
            if (isOpen(stage, allowance)) {
                sweep(relaxation, worth, allowance, width);
            }
        }
        Mending mending = new Mending(ways, best);
        if (isOpen(stage, allowance)) {
            int never = ways.season().last() + 1;
            mending.sweepAnew(never, never, relaxation, worth, allowance);
        }
        if (isOpen(stage, allowance)) {
            relaxation = new Tightening(ways, stage, allowance).towards(stage.cost(best.tally()), relaxation);
            prove(stage, Rounding.up(relaxation.bound()));
        }
        for (int width : WIDE) {
            if (isOpen(stage, allowance)) {
                sweep(relaxation, worth, allowance, width);
            }
            mending.mend(relaxation, worth, allowance);
        }
    }

    private void sweep(Relaxation relaxation, Worth worth, Allowance allowance, int width) {
        prove(relaxation.stage(), new Sweep(ways, relaxation, worth, best, allowance, none, width).run());
    }

    private boolean isOpen(Stage stage, Allowance allowance) {
        return !allowance.isSpent() && best.isOpen(stage);
    }

    /** A sweep that came upon a plan better at a goal before has looked no further for one at the stage's own: what it ruled out is then no bound. */
    private void prove(Stage stage, int cost) {
        if (stage.isLimitOf(best.tally())) {
            best.prove(stage.goal(), stage.atCost(cost));
        }
    }
}
