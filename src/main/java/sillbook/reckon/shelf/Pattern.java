// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.shelf;

import java.util.ArrayList;
import java.util.List;
import sillbook.reckon.packing.Point;

/** The regular ways to set like round pots on a shelf. */
public enum Pattern {
    SQUARE {
        @Override
        List<Point> places(double width, double depth, double pot) {
            List<Point> places = new ArrayList<>();
            for (int row = 0; row < whole(depth / pot); row++) {
                places.addAll(row(whole(width / pot), pot / 2, pot / 2 + row * pot, pot));
            }
            return places;
        }
    },
    /** Rows along the width, every other shifted by half a pot. */
    ROWS_ALONG_WIDTH {
        @Override
        List<Point> places(double width, double depth, double pot) {
            return shifted(width, depth, pot);
        }
    },
    /** Rows along the depth. */
    ROWS_ALONG_DEPTH {
        @Override
        List<Point> places(double width, double depth, double pot) {
            return shifted(depth, width, pot).stream()
                    .map(place -> new Point(place.y(), place.x()))
                    .toList();
        }
    };

    private static final double ROUNDING = 1e-9;
    private static final double ROW = Math.sqrt(3) / 2;

    /** Places counted from a corner of the shelf, for pots of which at least one fits. */
    abstract List<Point> places(double width, double depth, double pot);

    /** The whole part; 3 where a division gives a hair less. */
    static int whole(double quotient) {
        return (int) Math.floor(quotient + ROUNDING);
    }

    private static List<Point> shifted(double along, double across, double pot) {
        List<Point> places = new ArrayList<>();
        int rows = 1 + whole((across - pot) / (pot * ROW));
        for (int row = 0; row < rows; row++) {
            double shift = row % 2 * pot / 2;
            places.addAll(row(whole((along - shift) / pot), pot / 2 + shift, pot / 2 + row * pot * ROW, pot));
        }
        return places;
    }

    private static List<Point> row(int count, double x, double y, double pot) {
        List<Point> row = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            row.add(new Point(x + i * pot, y));
        }
        return row;
    }
}
