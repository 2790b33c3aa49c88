// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.packing;

import java.util.SplittableRandom;

/**
 * An oblong room.
 *
 * @param width along x, above 0
 * @param depth along y, above 0
 */
public record OblongRoom(double width, double depth) implements Room {
    public OblongRoom {
        if (!(width > 0) || !(depth > 0)) {
            throw new IllegalArgumentException("a room " + width + " by " + depth);
        }
    }

    @Override
    public double area() {
        return width * depth;
    }

    @Override
    public double clearance(Point centre) {
        return Math.min(width / 2 - Math.abs(centre.x()), depth / 2 - Math.abs(centre.y()));
    }

    @Override
    public Point somewhere(SplittableRandom random) {
        return new Point(width * (random.nextDouble() - 0.5), depth * (random.nextDouble() - 0.5));
    }

    @Override
    public double overhang(double x, double y, double radius, double[] slope, int at) {
        return beyond(x, radius - width / 2, slope, at) + beyond(y, radius - depth / 2, slope, at + 1);
    }

    private static double beyond(double from, double reach, double[] slope, int at) {
        double over = Math.max(0, Math.abs(from) + reach);
        slope[at] += 2 * over * Math.signum(from);
        return over * over;
    }
}
