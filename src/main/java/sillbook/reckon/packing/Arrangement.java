// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.packing;

import java.util.List;

/**
 * Discs at their places in a room.
 *
 * @param radii as asked for, above 0
 * @param centres as many
 */
public record Arrangement(Room room, List<Double> radii, List<Point> centres) {
    /** Places hold to this, in scales. */
    public static final double ROUNDING = 1e-9;

    public Arrangement {
        radii = List.copyOf(radii);
        centres = List.copyOf(centres);
        if (radii.size() != centres.size() || !radii.stream().allMatch(radius -> radius > 0)) {
            throw new IllegalArgumentException(radii + " at " + centres.size() + " places");
        }
    }

    /**
     * How much larger all discs may be at these places, all by the same factor, before two overlap or one leaves the room: 1 where they just fit, endless where there are none. It is worked out from the places alone, so that it holds however
     * they were found.
     */
    public double scale() {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < centres.size(); i++) {
            least = Math.min(least, room.clearance(centres.get(i)) / radii.get(i));
            for (int j = 0; j < i; j++) {
                double apart = centres.get(i).distance(centres.get(j));
                least = Math.min(least, apart / (radii.get(i) + radii.get(j)));
            }
        }
        return least;
    }
}
