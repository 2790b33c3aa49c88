// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.fit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sillbook.reckon.packing.Arrangement;
import sillbook.reckon.packing.Point;
import sillbook.reckon.packing.RoundRoom;
import sillbook.reckon.packing.Scatter;

/**
 * One round layer of bulbs of several sizes.
 *
 * @param across the inside of the pot at their depth, in cm, above 0
 * @param bulbs their diameters in cm, above 0; 1 to {@link Scatter#MOST}
 */
public record Mixture(double across, List<Double> bulbs, Spacing spacing) {
    private static final int STARTS = 300;
    private static final long SEED = 1;
    private static final double ROUNDING = 1e-9;

    public Mixture {
        bulbs = List.copyOf(bulbs);
        boolean isSized = across > 0 && bulbs.stream().allMatch(bulb -> bulb > 0);
        if (!isSized || bulbs.isEmpty() || bulbs.size() > Scatter.MOST) {
            throw new IllegalArgumentException("bulbs of " + bulbs + " cm in a pot of " + across + " cm");
        }
    }

    private double room() {
        return across - 2 * spacing.wall() + spacing.gap();
    }

    /** Each bulb with its share of the gaps. */
    private List<Double> discs() {
        return bulbs.stream().map(bulb -> bulb + spacing.gap()).toList();
    }

    /** Whether it is certain that they do not fit: the two widest side by side are too wide, or all together cover more than the pot. */
    public boolean isTooMuch() {
        double room = room() * (1 + ROUNDING);
        double widest = discs().stream()
                .sorted(Comparator.reverseOrder())
                .limit(2)
                .mapToDouble(Double::doubleValue)
                .sum();
        double covered = discs().stream().mapToDouble(disc -> disc * disc).sum();
        return room <= 0 || widest > room || covered > room * room;
    }

    /** A place for each, in cm from the middle, in their order; empty where none were found, which is no proof. */
    public Optional<List<Point>> places() {
        return isTooMuch() ? Optional.empty() : scatter().fitting(STARTS, SEED).map(Arrangement::centres);
    }

    private Scatter scatter() {
        return new Scatter(
                new RoundRoom(room()), discs().stream().map(disc -> disc / 2).toList());
    }
}
