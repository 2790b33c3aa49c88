// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.Arrays;
import sillbook.reckon.cover.Cells.Stretch;

/**
 * A lower bound on the cost of any plan, and of any plan that holds some ways already. Room, the number of pots of a kind and wishes may be broken at a price, which leaves a shortest path over the days (Lagrangian relaxation:
 * M. L. Fisher, The Lagrangian relaxation method for solving integer programming problems, Management Science 27, 1981). Ways that come to less than nothing at these prices are all taken, as many as a kind has pots, and
 * serve the path for nothing.
 */
final class Relaxation {
    private final Ways ways;
    private final Stage stage;
    private final Prices prices;
    private final double[] reduced;
    private final int[] welcome;
    private final int[] lacking;
    private final Tail tail;
    private final double constant;

    Relaxation(Ways ways, Stage stage, Prices prices, Fixed fixed) {
        this.ways = ways;
        this.stage = stage;
        this.prices = prices;
        this.reduced = reduced();
        this.welcome = welcome();
        this.lacking = prices.dearestWishes(ways.wishes(), stage.costOfLack() > 0 ? 0 : stage.mostLacking());
        this.tail = new Tail(new Arcs(ways, reduced), stage, fixed);
        this.constant = priced();
    }

    private double[] reduced() {
        double[] upTo = new double[prices.cells().length + 1];
        for (int cell = 0; cell < prices.cells().length; cell++) {
            upTo[cell + 1] = upTo[cell] + prices.cells()[cell];
        }
        double[] costs = new double[ways.count()];
        for (int number = 0; number < costs.length; number++) {
            Way way = ways.get(number);
            costs[number] = stage.cost(way)
                    + prices.kinds()[way.kind()]
                    + way.takes() * (sum(way.warm(), upTo) + sum(way.chilled(), upTo));
        }
        for (int wish = 0; wish < prices.wishes().length; wish++) {
            for (int number : ways.forWish(wish)) {
                costs[number] -= prices.wishes()[wish];
            }
        }
        return costs;
    }

    private static double sum(Stretch cells, double[] upTo) {
        return upTo[cells.to() + 1] - upTo[cells.from()];
    }

    /** For each kind the way that costs least, where that is less than nothing. */
    private int[] welcome() {
        int[] cheapest = new int[ways.kinds().size()];
        Arrays.fill(cheapest, Arcs.NONE);
        for (int number = 0; number < reduced.length; number++) {
            int kind = ways.get(number).kind();
            double least = cheapest[kind] == Arcs.NONE ? 0 : reduced[cheapest[kind]];
            if (reduced[number] < least) {
                cheapest[kind] = number;
            }
        }
        return cheapest;
    }

    private double priced() {
        double sum = 0;
        for (int kind = 0; kind < welcome.length; kind++) {
            int pots = ways.kinds().get(kind).count();
            sum += pots * (welcomeCost(kind) - prices.kinds()[kind]);
        }
        for (int cell = 0; cell < prices.cells().length; cell++) {
            sum -= prices.cells()[cell] * ways.cells().room(cell);
        }
        for (int wish = 0; wish < prices.wishes().length; wish++) {
            sum += prices.wishes()[wish] * (ways.wishes().get(wish).count() - lacking[wish]);
        }
        return sum;
    }

    private double welcomeCost(int kind) {
        return welcome[kind] == Arcs.NONE ? 0 : reduced[welcome[kind]];
    }

    /** What any plan costs at least. */
    double bound() {
        return constant + rest(0, stage.mostGaps(), stage.mostUsed());
    }

    /** What the bound rises by when a way is taken, beyond what the days it covers take off the rest. */
    double rise(int way) {
        return reduced[way] - welcomeCost(ways.get(way).kind());
    }

    /** What the bound rises by when so many pots that a wish still lacks are given up. */
    double riseOfLack(int wish, int pots) {
        return stage.costOfLack() == 0 ? 0 : pots * (stage.costOfLack() - prices.wishes()[wish]);
    }

    /** The bound before any way is taken, without the rest of the days. */
    double constant() {
        return constant;
    }

    Stage stage() {
        return stage;
    }

    /** What the days from one on cost at least, counted from the season's first. */
    double rest(int day, int gapsLeft, int usedLeft) {
        return stage.covers() ? tail.from(day, gapsLeft, usedLeft) : 0;
    }

    Prices prices() {
        return prices;
    }

    /** How much it took to work out, in ways weighed. */
    int effort() {
        return ways.count() + tail.entries();
    }

    /** Where the bound rises: what the relaxed plan takes too much of, and what it lacks. That wishes may be given up is left out of it: taken in, the prices swing from one wish to the other. */
    Prices slope() {
        int[] times = stage.covers() ? tail.path(ways.count()) : new int[ways.count()];
        for (int number = 0; number < times.length; number++) {
            times[number] = reduced[number] < 0 ? 0 : times[number];
        }
        for (int kind = 0; kind < welcome.length; kind++) {
            if (welcome[kind] != Arcs.NONE) {
                times[welcome[kind]] += ways.kinds().get(kind).count();
            }
        }
        return slope(times);
    }

    private Prices slope(int[] times) {
        Prices slope = Prices.none(ways);
        for (int kind = 0; kind < slope.kinds().length; kind++) {
            slope.kinds()[kind] = -ways.kinds().get(kind).count();
        }
        for (int cell = 0; cell < slope.cells().length; cell++) {
            slope.cells()[cell] = -ways.cells().room(cell);
        }
        for (int wish = 0; wish < slope.wishes().length; wish++) {
            slope.wishes()[wish] = ways.wishes().get(wish).count();
            for (int number : ways.forWish(wish)) {
                slope.wishes()[wish] -= times[number];
            }
        }
        for (int number = 0; number < times.length; number++) {
            if (times[number] > 0) {
                Way way = ways.get(number);
                slope.kinds()[way.kind()] += times[number];
                add(way.warm(), times[number] * way.takes(), slope.cells());
                add(way.chilled(), times[number] * way.takes(), slope.cells());
            }
        }
        return slope;
    }

    private static void add(Stretch stretch, int load, double[] cells) {
        for (int cell = stretch.from(); cell <= stretch.to(); cell++) {
            cells[cell] += load;
        }
    }
}
