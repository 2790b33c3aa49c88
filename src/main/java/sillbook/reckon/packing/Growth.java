// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.packing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Lets discs grow together in a room, from scattered places, until they jam: at each size they are pushed apart as far as it goes, and the size between what fitted and what did not is halved in. Other places jam at other sizes; the best of many starts is
 * kept. The same seed finds the same.
 *
 * @param radii as asked for, above 0; only how they stand to each other matters
 */
public record Growth(Room room, List<Double> radii) {
    /** How many discs are worth searching places for; more take long, and are found badly. */
    public static final int MOST = 60;

    private static final int STEPS = 400;
    private static final double FINE = 1e-11;

    /** A sum of squares below this, in units of the room's area, is no overlap. */
    private static final double NOTHING = 1e-24;

    public Growth {
        radii = List.copyOf(radii);
        if (radii.isEmpty()) {
            throw new IllegalArgumentException("no discs");
        }
    }

    public static Growth ofLike(Room room, int count, double radius) {
        return new Growth(room, Collections.nCopies(count, radius));
    }

    /**
     * The best of so many starts, or the first that is good enough.
     *
     * @param enough a scale that is good enough, as 1 for discs that need not be larger than asked
     */
    public Arrangement best(int starts, long seed, double enough) {
        SplittableRandom random = new SplittableRandom(seed);
        Arrangement best = arrangement(scattered(random));
        for (int i = 0; i < starts && best.scale() < enough; i++) {
            Bracket next = new Bracket(scattered(random));
            double had = Math.max(0, best.scale());
            next.narrow(had, enough);
            best = next.best.scale() > had ? next.best : best;
        }
        return best;
    }

    /** Discs of just the size asked for, at the first places that were found for them in so many starts; empty is no proof that there are none. */
    public Optional<Arrangement> fitting(int starts, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < starts; i++) {
            double[] places = scattered(random);
            pushed(places, 1);
            Arrangement found = arrangement(places);
            if (found.scale() >= 1 - Arrangement.ROUNDING) {
                return Optional.of(found);
            }
        }
        return Optional.empty();
    }

    private double[] scattered(SplittableRandom random) {
        double[] places = new double[2 * radii.size()];
        for (int i = 0; i < radii.size(); i++) {
            Point point = room.somewhere(random);
            places[2 * i] = point.x();
            places[2 * i + 1] = point.y();
        }
        return places;
    }

    private double discs() {
        return radii.stream().mapToDouble(radius -> Math.PI * radius * radius).sum();
    }

    /** One start: between a scale that fits and one that does not from here. */
    private final class Bracket {
        private final double[] places;
        private Arrangement best;

        private Bracket(double[] places) {
            this.places = places;
            this.best = arrangement(places);
        }

        /** Pushes the discs apart; whether they fit in the end. */
        private boolean fits(double scale) {
            boolean isFit = pushed(places, scale) <= NOTHING * room.area();
            Arrangement here = arrangement(places);
            best = here.scale() > best.scale() ? here : best;
            return isFit;
        }

        /** Until the scale is known, or known to be none above one that is already had. */
        private void narrow(double had, double enough) {
            double most = Math.sqrt(room.area() / discs());
            double least = Math.max(0, best.scale());
            while (most - least > FINE * most && most > had && least < enough) {
                double scale = (least + most) / 2;
                boolean isFit = fits(scale);
                least = Math.max(isFit ? scale : least, best.scale());
                most = isFit ? Math.max(most, least) : scale;
            }
        }
    }

    /** What is left of the overlap of discs larger by a factor; the places are moved. */
    private double pushed(double[] places, double scale) {
        Overlap overlap = new Overlap(room, radii);
        return new Descent((at, slope) -> overlap.at(at, scale, slope)).from(places, STEPS, NOTHING * room.area());
    }

    private Arrangement arrangement(double[] places) {
        List<Point> centres = new ArrayList<>();
        for (int i = 0; i < radii.size(); i++) {
            centres.add(new Point(places[2 * i], places[2 * i + 1]));
        }
        return new Arrangement(room, radii, centres);
    }
}
