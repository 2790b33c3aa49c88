// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What a pot of a kind costs, a unit of room in a cell, and what a pot for a wish earns, in the cost of a stage; at least 0. Any prices give a bound; {@link Tightening} looks for those that give a good one.
 */
final class Prices {
    private final double[] kinds;
    private final double[] cells;
    private final double[] wishes;

    private Prices(double[] kinds, double[] cells, double[] wishes) {
        this.kinds = kinds;
        this.cells = cells;
        this.wishes = wishes;
    }

    static Prices none(Ways ways) {
        return new Prices(
                new double[ways.kinds().size()],
                new double[ways.cells().count()],
                new double[ways.wishes().size()]);
    }

    double[] kinds() {
        return kinds;
    }

    double[] cells() {
        return cells;
    }

    double[] wishes() {
        return wishes;
    }

    /** Farther along a direction, as far as prices may go. */
    Prices plus(Prices direction, double step, double dearestWish) {
        return new Prices(
                moved(kinds, direction.kinds, step, Double.MAX_VALUE),
                moved(cells, direction.cells, step, Double.MAX_VALUE),
                moved(wishes, direction.wishes, step, dearestWish));
    }

    /** Most of this direction, and some of an earlier one: it swings less. */
    Prices blendedWith(Prices earlier, double share) {
        return new Prices(
                blended(kinds, earlier.kinds, share),
                blended(cells, earlier.cells, share),
                blended(wishes, earlier.wishes, share));
    }

    double squareLength() {
        return squares(kinds) + squares(cells) + squares(wishes);
    }

    /** How many pots each wish lacks where so many may be lacking and the dearest are given up. */
    int[] dearestWishes(List<DayWish> wished, int mostLacking) {
        int[] lacking = new int[wishes.length];
        List<Integer> dearestFirst = IntStream.range(0, wishes.length)
                .boxed()
                .sorted(Comparator.comparingDouble(wish -> -wishes[wish]))
                .toList();
        int left = mostLacking;
        for (int wish : dearestFirst) {
            lacking[wish] = Math.min(left, wished.get(wish).count());
            left -= lacking[wish];
        }
        return lacking;
    }

    private static double squares(double[] numbers) {
        double sum = 0;
        for (double number : numbers) {
            sum += number * number;
        }
        return sum;
    }

    private static double[] moved(double[] from, double[] direction, double step, double most) {
        double[] moved = from.clone();
        for (int i = 0; i < moved.length; i++) {
            moved[i] = Math.min(most, Math.max(0, moved[i] + step * direction[i]));
        }
        return moved;
    }

    private static double[] blended(double[] of, double[] earlier, double share) {
        double[] blended = of.clone();
        for (int i = 0; i < blended.length; i++) {
            blended[i] += share * (earlier[i] - blended[i]);
        }
        return blended;
    }
}
