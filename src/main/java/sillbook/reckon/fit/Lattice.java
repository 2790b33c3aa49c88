// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sillbook.reckon.packing.Point;

/** Rows of a triangular lattice, cut out round: a way to set many discs that is always possible and seldom the best. */
final class Lattice {
    private static final double ROUNDING = 1e-9;
    private static final double ROW = Math.sqrt(3) / 2;

    /** How finely the middle of the pot is moved about between three points of the lattice. */
    private static final int SHIFTS = 12;

    private Lattice() {}

    /**
     * The most points found for any place of the middle.
     *
     * @param distance between neighbours
     * @param radius how far from the middle a point may lie
     */
    static List<Point> within(double radius, double distance) {
        List<List<Point>> tried = new ArrayList<>();
        for (int i = 0; i <= SHIFTS; i++) {
            for (int j = 0; j <= SHIFTS; j++) {
                tried.add(about(new Point(distance * i / SHIFTS / 2, distance * ROW * j / SHIFTS), radius, distance));
            }
        }
        return tried.stream().max(Comparator.comparingInt(List::size)).orElseThrow();
    }

    private static List<Point> about(Point middle, double radius, double distance) {
        List<Point> points = new ArrayList<>();
        int rows = (int) Math.ceil(radius / (distance * ROW)) + 1;
        int columns = (int) Math.ceil(radius / distance) + 2;
        for (int row = -rows; row <= rows; row++) {
            double shift = Math.floorMod(row, 2) * distance / 2;
            for (int column = -columns; column <= columns; column++) {
                Point point = new Point(column * distance + shift - middle.x(), row * distance * ROW - middle.y());
                if (point.distance(Point.MIDDLE) <= radius + ROUNDING) {
                    points.add(point);
                }
            }
        }
        return points;
    }
}
