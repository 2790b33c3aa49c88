// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

/**
 * The least that the days from one on to the season's end can cost, with so many days without bloom and so many pots still allowed, where neither room nor the number of pots of a kind matters but in their prices: a shortest
 * path over the days, worked out from the last day back. Allowances beyond what is possible are as good as endless.
 */
final class Tail {
    private static final int MOST_ENTRIES = 200_000;
    private static final double CLOSE = 1e-12;

    private final Arcs arcs;
    private final Fixed fixed;
    private final double costOfGap;
    private final boolean gapsAreEndless;
    private final boolean usedIsEndless;
    private final int gapLevels;
    private final int usedLevels;
    private final double[] least;

    Tail(Arcs arcs, Stage stage, Fixed fixed) {
        this.arcs = arcs;
        this.fixed = fixed;
        this.costOfGap = stage.costOfGap();
        int days = arcs.days();
        this.gapsAreEndless = stage.mostGaps() >= days;
        this.gapLevels = gapsAreEndless ? 1 : stage.mostGaps() + 1;
        long entries = (stage.mostUsed() + 1L) * gapLevels * (days + 1);
        this.usedIsEndless = stage.mostUsed() >= days || entries > MOST_ENTRIES;
        this.usedLevels = usedIsEndless ? 1 : stage.mostUsed() + 1;
        this.least = new double[(days + 1) * gapLevels * usedLevels];
        for (int day = days - 1; day >= 0; day--) {
            for (int gaps = 0; gaps < gapLevels; gaps++) {
                for (int used = 0; used < usedLevels; used++) {
                    least[slot(day, gaps, used)] = least(day, gaps, used);
                }
            }
        }
    }

    private double least(int day, int gaps, int used) {
        if (fixed.covers(day)) {
            return least[slot(day + 1, gaps, used)];
        }
        double best = afterGap(day, gaps, used);
        if (usedIsEndless || used > 0) {
            int fewer = Math.max(0, used - 1);
            int reach = arcs.reach(day);
            for (int onward = 0; onward < reach; onward++) {
                best = Math.min(best, arcs.cost(day, onward) + least[slot(day + onward + 1, gaps, fewer)]);
            }
        }
        return best;
    }

    private double afterGap(int day, int gaps, int used) {
        if (!gapsAreEndless && gaps == 0) {
            return Double.POSITIVE_INFINITY;
        }
        return costOfGap + least[slot(day + 1, Math.max(0, gaps - 1), used)];
    }

    private int slot(int day, int gaps, int used) {
        return (day * gapLevels + gaps) * usedLevels + used;
    }

    /** How many entries were worked out, each from some arcs. */
    int entries() {
        return least.length;
    }

    /** From a day on, counted from the season's first; infinite where it cannot be. */
    double from(int day, int gapsLeft, int usedLeft) {
        return least[slot(day, Math.min(gapsLeft, gapLevels - 1), Math.min(usedLeft, usedLevels - 1))];
    }

    /** How often each way is on a cheapest path. */
    int[] path(int count) {
        int[] times = new int[count];
        int gaps = gapLevels - 1;
        int used = usedLevels - 1;
        int day = 0;
        while (day < arcs.days() && Double.isFinite(least[slot(day, gaps, used)])) {
            int onward = onward(day, gaps, used);
            if (fixed.covers(day)) {
                day++;
            } else if (onward < 0) {
                gaps = Math.max(0, gaps - 1);
                day++;
            } else {
                times[arcs.way(day, onward)]++;
                used = Math.max(0, used - 1);
                day += onward + 1;
            }
        }
        return times;
    }

    /** The arc a cheapest path takes; below 0 where it leaves the day without bloom. */
    private int onward(int day, int gaps, int used) {
        double best = least[slot(day, gaps, used)];
        int fewer = Math.max(0, used - 1);
        for (int onward = arcs.reach(day) - 1; onward >= 0; onward--) {
            boolean isAllowed = usedIsEndless || used > 0;
            double cost = arcs.cost(day, onward) + least[slot(day + onward + 1, gaps, fewer)];
            if (isAllowed && cost <= best + CLOSE) {
                return onward;
            }
        }
        return Arcs.NONE;
    }
}
