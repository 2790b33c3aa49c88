// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.packing;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;

/**
 * Downhill to the nearest hollow of a smooth sum: the method of limited memory of J. Nocedal, Updating quasi-Newton matrices with limited storage, Mathematics of Computation 35, 1980, with steps halved until they go down, and doubled while it stays steep.
 */
final class Descent {
    private static final int MEMORY = 8;
    private static final double ENOUGH = 1e-4;
    private static final double SHORTEST = 1e-12;
    private static final double LONGEST = 1e6;

    /** Where it still goes down by this share of the slope, a longer step is tried. */
    private static final double STEEP = 0.9;

    /** A step that takes less than this share off the sum has come to the ground of a hollow. */
    private static final double STILL = 1e-6;

    private final Slope slope;
    private final Deque<Move> moves = new ArrayDeque<>();

    Descent(Slope slope) {
        this.slope = slope;
    }

    /** A sum with its slope. */
    interface Slope {
        /** The sum there; the array is overwritten with its slope. */
        double at(double[] place, double[] slope);
    }

    /** One step taken and how the slope changed by it. */
    private static final class Move {
        private final double[] step;
        private final double[] change;
        private final double product;

        Move(double[] step, double[] change, double product) {
            this.step = step;
            this.change = change;
            this.product = product;
        }

        double[] step() {
            return step;
        }

        double[] change() {
            return change;
        }

        double product() {
            return product;
        }
    }

    /**
     * Goes down from a place, which is moved.
     *
     * @param enough a sum that is low enough
     * @return the sum where it ended
     */
    double from(double[] place, int steps, double enough) {
        moves.clear();
        double[] here = new double[place.length];
        double sum = slope.at(place, here);
        for (int i = 0; i < steps && sum > enough; i++) {
            double next = step(place, here, sum);
            if (!(next < sum * (1 - STILL))) {
                return next;
            }
            sum = next;
        }
        return sum;
    }

    /** One step; place and slope are moved with it. Not lower where there is no way down that can be told from rounding. */
    private double step(double[] place, double[] here, double sum) {
        double[] way = way(here);
        double down = dot(way, here);
        double[] there = new double[place.length];
        double[] next = place.clone();
        double length = 1;
        double lower = probe(place, way, length, next, there);
        while (lower <= sum - ENOUGH * length * down && dot(way, there) > STEEP * down && length < LONGEST) {
            length *= 2;
            lower = probe(place, way, length, next, there);
        }
        while (!(lower <= sum - ENOUGH * length * down)) {
            length /= 2;
            if (length < SHORTEST) {
                return sum;
            }
            lower = probe(place, way, length, next, there);
        }
        remember(minus(next, place), minus(there, here));
        System.arraycopy(next, 0, place, 0, place.length);
        System.arraycopy(there, 0, here, 0, here.length);
        return lower;
    }

    /** The sum so far along a way; where that is, and its slope there, are written over the last two. */
    private double probe(double[] place, double[] way, double length, double[] next, double[] there) {
        System.arraycopy(place, 0, next, 0, place.length);
        add(next, -length, way);
        return slope.at(next, there);
    }

    private void remember(double[] step, double[] change) {
        double product = dot(step, change);
        if (product <= 0) {
            return;
        }
        if (moves.size() == MEMORY) {
            moves.removeLast();
        }
        moves.addFirst(new Move(step, change, product));
    }

    /** The slope, bent by what the last moves tell of how it curves. */
    private double[] way(double[] here) {
        double[] way = here.clone();
        double[] shares = new double[moves.size()];
        int i = 0;
        for (Move move : moves) {
            shares[i] = dot(move.step(), way) / move.product();
            add(way, -shares[i++], move.change());
        }
        double curve = moves.isEmpty()
                ? 4
                : dot(moves.getFirst().change(), moves.getFirst().change())
                        / moves.getFirst().product();
        for (int j = 0; j < way.length; j++) {
            way[j] /= curve;
        }
        for (Iterator<Move> oldest = moves.descendingIterator(); oldest.hasNext(); ) {
            Move move = oldest.next();
            add(way, shares[--i] - dot(move.change(), way) / move.product(), move.step());
        }
        return way;
    }

    private static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }

    private static void add(double[] to, double factor, double[] what) {
        for (int i = 0; i < to.length; i++) {
            to[i] += factor * what[i];
        }
    }

    private static double[] minus(double[] one, double[] other) {
        double[] difference = one.clone();
        add(difference, -1, other);
        return difference;
    }
}
