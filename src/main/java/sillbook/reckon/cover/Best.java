// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.List;

/** The best plan so far. */
final class Best {
    private final Ways ways;
    private final Watch watch;
    private Choice choice;
    private Evaluation comesTo;
    private Tally bound = new Tally(0, 0, 0, 0);

    /** To begin with, no pot comes in but those that are fixed. */
    Best(Ways ways, Watch watch) {
        this.ways = ways;
        this.watch = watch;
        this.choice = new Choice(ways, List.of());
        this.comesTo = choice.evaluation();
    }

    Tally tally() {
        return comesTo.tally();
    }

    /** Takes a choice if it is better. */
    void offer(List<Way> chosen) {
        Choice offered = new Choice(ways, chosen);
        Evaluation better = offered.evaluation();
        if (better.tally().compareTo(tally()) < 0) {
            bound = tally().boundFor(better.tally(), bound);
            choice = offered;
            comesTo = better;
            watch.found(plan());
        }
    }

    /** What no plan can go below at a goal, if it does as well as this one at the goals before. */
    void prove(Stage.Goal goal, int noLess) {
        int before = goal.of(bound);
        if (noLess > before) {
            bound = goal.in(bound, noLess);
            watch.found(plan());
        }
    }

    /** Whether it may still be bettered at a stage's goal, within the stage's limit. */
    boolean isOpen(Stage stage) {
        Stage.Goal goal = stage.goal();
        return stage.isLimitOf(tally()) && goal.of(bound) < goal.of(tally());
    }

    List<Way> chosen() {
        return choice.chosen();
    }

    Plan plan() {
        return new Plan(choice.pulls(), tally(), comesTo.longestGap(), bound);
    }
}
