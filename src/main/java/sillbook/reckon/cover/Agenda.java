// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.ArrayList;
import java.util.List;

/** The steps that are still to be carried out, each under the first day that still asks for something after it. */
final class Agenda {
    private static final int SPARE = 8;

    private final Ways ways;
    private final Stage stage;
    private final Fixed fixed;
    private final int most;
    private final List<List<Step>> days = new ArrayList<>();
    private double dropped = Double.POSITIVE_INFINITY;

    /** Keeps a few times as many steps a day as are likely to be carried out. */
    Agenda(Ways ways, Stage stage, Fixed fixed, int width) {
        this.ways = ways;
        this.stage = stage;
        this.fixed = fixed;
        this.most = SPARE * width;
        for (int day = 0; day < ways.season().days(); day++) {
            days.add(new ArrayList<>());
        }
    }

    /** The last day up to which all are in bloom or given up after a step. */
    int coveredTo(Beginning from, int move) {
        int covered = switch (move) {
            case Step.GAP -> from.coveredTo() + 1;
            case Step.LACK -> from.coveredTo();
            default -> Math.max(from.coveredTo(), ways.get(move).last());
        };
        return fixed.coveredFrom(covered);
    }

    /** The first day that asks for something; the day after the season where none does. */
    int firstDay(Beginning beginning) {
        return dayAfter(beginning, Step.GAP, beginning.coveredTo());
    }

    /** The first day that still asks for something after a step; the day after the season where none does. */
    int dayAfter(Beginning from, int move, int coveredTo) {
        int end = ways.season().last() + 1;
        int uncovered = stage.covers() ? coveredTo + 1 : end;
        return Math.min(uncovered, wishDay(from, move));
    }

    private int wishDay(Beginning from, int move) {
        int wish = move == Step.LACK ? from.nextWish() + 1 : from.nextWish();
        while (wish < ways.wishes().size() && isMet(wish, from, move)) {
            wish++;
        }
        return wish < ways.wishes().size()
                ? ways.wishes().get(wish).day()
                : ways.season().last() + 1;
    }

    private boolean isMet(int wish, Beginning from, int move) {
        int more = move >= 0 && ways.serves(ways.get(move), wish) ? 1 : 0;
        return from.taken().met(wish) + more >= ways.wishes().get(wish).count();
    }

    /** On a day of the season. */
    void put(int day, Step step) {
        List<Step> steps = days.get(day - ways.season().first());
        steps.add(step);
        if (steps.size() >= 2 * most) {
            steps.sort(Step.PROMISE);
            dropped = Math.min(dropped, steps.get(most).bound());
            steps.subList(most, steps.size()).clear();
        }
    }

    /** Takes what is under a day, the most promising first. */
    List<Step> take(int day) {
        List<Step> steps = days.set(day - ways.season().first(), new ArrayList<>());
        steps.sort(Step.PROMISE);
        return steps;
    }

    /** The least bound of the steps there was no room for; endless where there was room for all. */
    double dropped() {
        return dropped;
    }
}
