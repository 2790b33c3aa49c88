// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.packing;

import java.util.Arrays;
import java.util.List;

/** How far discs of given sizes overlap each other and the wall, squared and summed: 0 where they fit. Centres are two numbers a disc, one after the other. */
final class Overlap {
    private final Room room;
    private final double[] radii;

    Overlap(Room room, List<Double> radii) {
        this.room = room;
        this.radii = radii.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /**
     * The sum, for discs that are larger than theirs by a factor.
     *
     * @param slope is overwritten with that of the sum
     */
    double at(double[] centres, double factor, double[] slope) {
        Arrays.fill(slope, 0);
        double sum = 0;
        for (int i = 0; i < radii.length; i++) {
            sum += room.overhang(centres[2 * i], centres[2 * i + 1], factor * radii[i], slope, 2 * i);
            for (int j = 0; j < i; j++) {
                sum += between(centres, factor, slope, i, j);
            }
        }
        return sum;
    }

    private double between(double[] centres, double factor, double[] slope, int i, int j) {
        double dx = centres[2 * i] - centres[2 * j];
        double dy = centres[2 * i + 1] - centres[2 * j + 1];
        double touching = factor * (radii[i] + radii[j]);
        double square = dx * dx + dy * dy;
        if (square >= touching * touching || square == 0) {
            return square == 0 ? touching * touching : 0;
        }
        double apart = Math.sqrt(square);
        double over = touching - apart;
        double push = 2 * over / apart;
        slope[2 * i] -= push * dx;
        slope[2 * i + 1] -= push * dy;
        slope[2 * j] += push * dx;
        slope[2 * j + 1] += push * dy;
        return over * over;
    }
}
