// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.Arrays;

/** The cheapest way to have the season in bloom from a day that is still without to a later day, for each two such days. Days are counted from the season's first. */
final class Arcs {
    static final int NONE = -1;

    private final int days;
    private final int reach;
    private final double[] costs;
    private final int[] ways;

    /** Of ways at these costs, none below 0. */
    Arcs(Ways all, double[] reduced) {
        this.days = all.season().days();
        this.reach = reach(all);
        this.costs = new double[days * reach];
        this.ways = new int[days * reach];
        Arrays.fill(costs, Double.POSITIVE_INFINITY);
        Arrays.fill(ways, NONE);
        for (int number = 0; number < reduced.length; number++) {
            Way way = all.get(number);
            offer(way.first() - all.season().first(), way.length() - 1, Math.max(0, reduced[number]), number);
        }
        for (int day = 1; day < days; day++) {
            for (int onward = 0; onward < reach - 1; onward++) {
                int before = (day - 1) * reach + onward + 1;
                offer(day, onward, costs[before], ways[before]);
            }
        }
    }

    private static int reach(Ways all) {
        int reach = 1;
        for (int number = 0; number < all.count(); number++) {
            reach = Math.max(reach, all.get(number).length());
        }
        return reach;
    }

    private void offer(int day, int onward, double cost, int way) {
        int slot = day * reach + onward;
        if (cost < costs[slot]) {
            costs[slot] = cost;
            ways[slot] = way;
        }
    }

    int days() {
        return days;
    }

    /** How many days later an arc from a day can end, at most. */
    int reach(int day) {
        return Math.min(reach, days - day);
    }

    /** Endless where there is no way. */
    double cost(int day, int onward) {
        return costs[day * reach + onward];
    }

    /** Which way is that cheap. */
    int way(int day, int onward) {
        return ways[day * reach + onward];
    }
}
