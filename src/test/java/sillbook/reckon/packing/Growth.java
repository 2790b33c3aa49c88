// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.packing;

import java.util.Collections;
import java.util.SplittableRandom;

/**
 * Lets discs grow together in a room, from scattered places, until they jam: at each size they are pushed apart as far as it goes, and the size between what fitted and what did not is halved in. Other places jam at other sizes; the best of many starts is
 * kept. The same seed finds the same.
 *
 * @param scatter of discs of which only matters how large they are to each other
 */
public record Growth(Scatter scatter) {
    private static final double FINE = 1e-11;

    public static Growth ofLike(Room room, int count, double radius) {
        return new Growth(new Scatter(room, Collections.nCopies(count, radius)));
    }

    /**
     * The best of so many starts, or the first that is good enough.
     *
     * @param enough a scale that is good enough, as 1 for discs that need not be larger than asked
     */
    public Arrangement best(int starts, long seed, double enough) {
        SplittableRandom random = new SplittableRandom(seed);
        Arrangement best = scatter.arrangement(scatter.scattered(random));
        for (int i = 0; i < starts && best.scale() < enough; i++) {
            Bracket next = new Bracket(scatter.scattered(random));
            double had = Math.max(0, best.scale());
            next.narrow(had, enough);
            best = next.best.scale() > had ? next.best : best;
        }
        return best;
    }

    private double discs() {
        return scatter.radii().stream()
                .mapToDouble(radius -> Math.PI * radius * radius)
                .sum();
    }

    /** One start: between a scale that fits and one that does not from here. */
    private final class Bracket {
        private final double[] places;
        private Arrangement best;

        private Bracket(double[] places) {
            this.places = places;
            this.best = scatter.arrangement(places);
        }

        /** Pushes the discs apart; whether they fit in the end. */
        private boolean fits(double scale) {
            boolean isFit = scatter.pushed(places, scale)
                    <= Scatter.NOTHING * scatter.room().area();
            Arrangement here = scatter.arrangement(places);
            best = here.scale() > best.scale() ? here : best;
            return isFit;
        }

        /** Until the scale is known, or known to be none above one that is already had. */
        private void narrow(double had, double enough) {
            double most = Math.sqrt(scatter.room().area() / discs());
            double least = Math.max(0, best.scale());
            while (most - least > FINE * most && most > had && least < enough) {
                double scale = (least + most) / 2;
                boolean isFit = fits(scale);
                least = Math.max(isFit ? scale : least, best.scale());
                most = isFit ? Math.max(most, least) : scale;
            }
        }
    }
}
