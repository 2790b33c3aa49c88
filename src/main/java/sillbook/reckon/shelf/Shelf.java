// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.shelf;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.reckon.packing.Arrangement;
import sillbook.reckon.packing.OblongRoom;
import sillbook.reckon.packing.Oler;
import sillbook.reckon.packing.Point;
import sillbook.reckon.packing.Scatter;

/**
 * An oblong shelf.
 *
 * @param width in cm, above 0
 * @param depth in cm, above 0
 */
public record Shelf(double width, double depth) {
    /** How many times as wide as a pot a shelf may be, either way. */
    public static final double WIDEST = 200;

    private static final int STARTS = 150;
    private static final long SEED = 1;
    private static final double ROUNDING = 1e-9;

    public Shelf {
        if (!(width > 0) || !(depth > 0) || Double.isInfinite(width + depth)) {
            throw new IllegalArgumentException("a shelf of " + width + " by " + depth + " cm");
        }
    }

    /**
     * Pots as they stand.
     *
     * @param places their middles in cm from a corner, along the width and along the depth
     * @param pattern empty where a search found them
     * @param atMost how many could stand, by what is proven
     */
    public record Standing(List<Point> places, Optional<Pattern> pattern, long atMost) {
        public Standing {
            places = List.copyOf(places);
        }

        public int count() {
            return places.size();
        }

        /** Whether no more can stand. */
        public boolean isProven() {
            return count() == atMost;
        }
    }

    /**
     * As many like pots as are known to stand side by side.
     *
     * @param pot across its rim, in cm, above 0; at least a two-hundredth of the shelf
     */
    public Standing most(double pot) {
        if (!(pot > 0) || !(Math.max(width, depth) <= WIDEST * pot)) {
            throw new IllegalArgumentException("pots of " + pot + " cm on a shelf of " + width + " by " + depth);
        }
        if (pot > Math.min(width, depth) * (1 + ROUNDING)) {
            return new Standing(List.of(), Optional.of(Pattern.SQUARE), 0);
        }
        long atMost = Math.min(oler(pot), cells(pot));
        Standing regular = Stream.of(Pattern.values())
                .map(pattern -> regular(pattern, pot, atMost))
                .max(Comparator.comparingInt(Standing::count))
                .orElseThrow();
        return searched(regular, pot);
    }

    private Standing regular(Pattern pattern, double pot, long atMost) {
        return new Standing(pattern.places(width, depth, pot), Optional.of(pattern), atMost);
    }

    /** As long as one pot more can be found a place for. */
    private Standing searched(Standing from, double pot) {
        Standing best = from;
        while (!best.isProven() && best.count() < Scatter.MOST) {
            Optional<Arrangement> more = Scatter.ofLike(new OblongRoom(width, depth), best.count() + 1, pot / 2)
                    .fitting(STARTS, SEED);
            if (more.isEmpty()) {
                return best;
            }
            best = new Standing(fromCorner(more.get().centres()), Optional.empty(), best.atMost());
        }
        return best;
    }

    private List<Point> fromCorner(List<Point> centres) {
        return centres.stream()
                .map(centre -> centre.plus(width / 2, depth / 2))
                .sorted(Comparator.comparingDouble(Point::y).thenComparingDouble(Point::x))
                .toList();
    }

    /** Oler's bound for the middles of the pots. */
    long oler(double pot) {
        double x = Math.max(0, width - pot);
        double y = Math.max(0, depth - pot);
        return Oler.most(x * y, 2 * (x + y), pot);
    }

    /** The middles lie in a rectangle; where it is cut into cells of which each has a diagonal shorter than a pot is wide, no cell holds two. */
    long cells(double pot) {
        double x = Math.max(0, width - pot) / pot;
        double y = Math.max(0, depth - pot) / pot;
        long fewest = Long.MAX_VALUE;
        for (long columns = Pattern.whole(x) + 1L; columns <= 2 * x + 2; columns++) {
            double left = 1 - x * x / columns / columns;
            if (left > ROUNDING) {
                long rows = (long) Math.floor(y / Math.sqrt(left) + ROUNDING) + 1;
                fewest = Math.min(fewest, columns * rows);
            }
        }
        return fewest;
    }
}
