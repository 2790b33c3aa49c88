// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.packing;

/** How many points with at least a distance between any two a convex region can hold, at most: N. Oler, An inequality in the geometry of numbers, Acta Mathematica 105, 1961. */
public final class Oler {
    private static final double ROUNDING = 1e-9;

    private Oler() {}

    /**
     * The bound; it may lie well above what is possible.
     *
     * @param area of the region of the centres, not below 0
     * @param around its perimeter; a line has twice its length
     * @param distance above 0
     */
    public static long most(double area, double around, double distance) {
        double unit = around / (2 * distance);
        return (long) Math.floor(2 / Math.sqrt(3) * area / (distance * distance) + unit + 1 + ROUNDING);
    }
}
