// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.fit;

import java.util.List;
import java.util.Optional;
import sillbook.reckon.packing.Oler;
import sillbook.reckon.packing.Point;

/**
 * One round layer of like bulbs.
 *
 * @param across the inside of the pot at the depth of the bulbs, in cm, above 0
 * @param bulb its diameter in cm, above 0; at least a fortieth of the pot's
 */
public record Bed(double across, double bulb, Spacing spacing) {
    /** How many times as wide as a bulb a pot may be. */
    public static final double WIDEST = 40;

    private static final double ROUNDING = 1e-9;

    public Bed {
        if (!(across > 0) || !(bulb > 0) || Double.isInfinite(bulb) || !(across <= WIDEST * bulb)) {
            throw new IllegalArgumentException("bulbs of " + bulb + " cm in a pot of " + across + " cm");
        }
    }

    /**
     * Where the bulbs sit, in cm from the middle.
     *
     * @param atMost how many could fit, by what is proven
     */
    public record Laid(List<Point> places, long atMost) {
        public Laid {
            places = List.copyOf(places);
        }

        public int count() {
            return places.size();
        }

        /** Whether no more can fit. */
        public boolean isProven() {
            return count() == atMost;
        }
    }

    /** The diameter of a bulb by its grade, which is its circumference, both in cm. */
    public static double ofGrade(double circumference) {
        return circumference / Math.PI;
    }

    public Bed with(Spacing other) {
        return new Bed(across, bulb, other);
    }

    private double pitch() {
        return bulb + spacing.gap();
    }

    /** How far from the middle the middle of a bulb may lie; below 0 where not one fits. */
    private double reach() {
        return across / 2 - spacing.wall() - bulb / 2;
    }

    private boolean holdsOne() {
        return reach() >= -ROUNDING;
    }

    /** How many times as wide as a bulb the room is, gaps counted in: what is compared with the ratios of packings. */
    public double ratio() {
        return (across - 2 * spacing.wall() + spacing.gap()) / pitch();
    }

    /** As many as are known to fit. */
    public Laid most() {
        if (!holdsOne()) {
            return new Laid(List.of(), 0);
        }
        int known = Packings.most(ratio());
        List<Point> lattice = known < Packings.MOST ? List.of() : Lattice.within(reach(), pitch());
        List<Point> places = lattice.size() > known ? lattice : places(known).orElseThrow();
        return new Laid(places, atMost());
    }

    /** By what is proven of packings, and by Oler's bound. */
    private long atMost() {
        double reach = Math.max(0, reach());
        long oler = Oler.most(Math.PI * reach * reach, 2 * Math.PI * reach, pitch());
        return Math.min(oler, Packings.tooMany(ratio()) - 1L);
    }

    /** So many, spread as far as the wall lets them; empty where they are not known to fit. */
    public Optional<List<Point>> places(int count) {
        if (count == 0) {
            return Optional.of(List.of());
        }
        if (count > Packings.MOST) {
            return Optional.of(most().places())
                    .filter(places -> places.size() >= count)
                    .map(places -> places.subList(0, count));
        }
        return Optional.of(Packings.of(count))
                .filter(packing -> holdsOne() && packing.ratio() <= ratio() + Packings.ROUNDING)
                .map(packing -> packing.spread(Math.max(0, reach())));
    }

    /** How far apart so many stand when they are spread as far as the wall lets them, in cm; below 0 where they overlap. From 2 to {@link Packings#MOST}. */
    public double apart(int count) {
        return 2 * reach() / (Packings.of(count).ratio() - 1) - bulb;
    }

    /** How many stand in a single ring along the wall. */
    public int ring() {
        if (!holdsOne()) {
            return 0;
        }
        double half = pitch() / 2 / reach();
        return half > 1 + ROUNDING || reach() <= 0
                ? 1
                : (int) Math.floor(Math.PI / Math.asin(Math.min(1, half)) + ROUNDING);
    }
}
