// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

/**
 * One goal to be minimised, by plans that do no worse than the limit at the goals before it. Its cost is counted in pots wished for, days, pots, or days in bloom: the days in bloom of all pots are their overlap and the days of
 * the season that are covered, which no longer change when the goals before overlap are settled. Fixed pots cost nothing.
 *
 * @param given what the fixed pots come to
 */
record Stage(Goal goal, Tally limit, Evaluation given) {
    enum Goal {
        UNMET,
        GAP,
        USED,
        OVERLAP;

        int of(Tally tally) {
            return switch (this) {
                case UNMET -> tally.unmet();
                case GAP -> tally.gapDays();
                case USED -> tally.used();
                case OVERLAP -> tally.overlap();
            };
        }

        /** A tally with another number for this goal. */
        Tally in(Tally tally, int number) {
            return switch (this) {
                case UNMET -> new Tally(number, tally.gapDays(), tally.used(), tally.overlap());
                case GAP -> new Tally(tally.unmet(), number, tally.used(), tally.overlap());
                case USED -> new Tally(tally.unmet(), tally.gapDays(), number, tally.overlap());
                case OVERLAP -> new Tally(tally.unmet(), tally.gapDays(), tally.used(), number);
            };
        }
    }

    private static final int ENDLESS = Integer.MAX_VALUE;

    /** What a way costs. */
    int cost(Way way) {
        return switch (goal) {
            case UNMET, GAP -> 0;
            case USED -> 1;
            case OVERLAP -> way.length();
        };
    }

    int costOfGap() {
        return goal == Goal.GAP ? 1 : 0;
    }

    int costOfLack() {
        return goal == Goal.UNMET ? 1 : 0;
    }

    /** Whether days without bloom matter. */
    boolean covers() {
        return goal != Goal.UNMET;
    }

    int mostLacking() {
        return goal == Goal.UNMET ? ENDLESS : limit.unmet();
    }

    int mostGaps() {
        return goal.compareTo(Goal.GAP) <= 0 ? ENDLESS : limit.gapDays();
    }

    /** Beside the fixed. */
    int mostUsed() {
        return goal == Goal.OVERLAP ? limit.used() - given.tally().used() : ENDLESS;
    }

    /** The cost of a plan that keeps the limit. */
    int cost(Tally tally) {
        return goal.of(tally) - free(tally);
    }

    /** What the goal comes to at a cost. */
    int atCost(int cost) {
        return Math.max(0, cost + free(limit));
    }

    /** How much more the goal comes to than the cost. */
    private int free(Tally tally) {
        return switch (goal) {
            case UNMET, GAP -> 0;
            case USED -> given.tally().used();
            case OVERLAP -> given.potDays() - given.inBloom().size() + tally.gapDays();
        };
    }

    /** Whether a plan is as good as the limit at the goals before. */
    boolean isLimitOf(Tally tally) {
        return (goal == Goal.UNMET || tally.unmet() == limit.unmet())
                && (goal.compareTo(Goal.GAP) <= 0 || tally.gapDays() == limit.gapDays())
                && (goal != Goal.OVERLAP || tally.used() == limit.used());
    }
}
