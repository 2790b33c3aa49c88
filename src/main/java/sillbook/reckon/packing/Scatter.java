// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.packing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Discs scattered in a room and pushed apart until none overlaps another, as often as it takes. The same seed finds the same.
 *
 * @param radii as asked for, above 0
 */
public record Scatter(Room room, List<Double> radii) {
    /** How many discs are worth searching places for; more take long, and are found badly. */
    public static final int MOST = 60;

    private static final int STEPS = 400;

    /** A sum of squares below this, in units of the room's area, is no overlap. */
    static final double NOTHING = 1e-24;

    public Scatter {
        radii = List.copyOf(radii);
        if (radii.isEmpty()) {
            throw new IllegalArgumentException("no discs");
        }
    }

    public static Scatter ofLike(Room room, int count, double radius) {
        return new Scatter(room, Collections.nCopies(count, radius));
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

    /** An abscissa and an ordinate for each disc, somewhere in the room. */
    double[] scattered(SplittableRandom random) {
        double[] places = new double[2 * radii.size()];
        for (int i = 0; i < radii.size(); i++) {
            Point point = room.somewhere(random);
            places[2 * i] = point.x();
            places[2 * i + 1] = point.y();
        }
        return places;
    }

    /** What is left of the overlap of discs larger by a factor; the places are moved. */
    double pushed(double[] places, double scale) {
        Overlap overlap = new Overlap(room, radii);
        return new Descent((at, slope) -> overlap.at(at, scale, slope)).from(places, STEPS, NOTHING * room.area());
    }

    /** The discs at places, as those of {@link #scattered}. */
    Arrangement arrangement(double[] places) {
        List<Point> centres = new ArrayList<>();
        for (int i = 0; i < radii.size(); i++) {
            centres.add(new Point(places[2 * i], places[2 * i + 1]));
        }
        return new Arrangement(room, radii, centres);
    }
}
