// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import sillbook.chart.PotDrawing.Middle;

/** A grid of dots, two across and four down in each cell, for what is drawn finer than a character. */
final class Dots {
    static final int ACROSS = 2;
    static final int DOWN = 4;

    private static final int BLANK = 0x2800;
    private static final int[][] BITS = {{0x01, 0x08}, {0x02, 0x10}, {0x04, 0x20}, {0x40, 0x80}};

    /** Steps on a circle for each dot of its width, so that no dot is left out. */
    private static final int STEPS = 8;

    private final int columns;
    private final int rows;
    private final int[] cells;

    Dots(int columns, int rows) {
        this.columns = columns;
        this.rows = rows;
        this.cells = new int[columns * rows];
    }

    int width() {
        return columns * ACROSS;
    }

    int height() {
        return rows * DOWN;
    }

    /** A dot counted from the left and from the top; none outside the grid. */
    void set(double across, double down) {
        int x = (int) Math.floor(across);
        int y = (int) Math.floor(down);
        if (x >= 0 && x < width() && y >= 0 && y < height()) {
            cells[y / DOWN * columns + x / ACROSS] |= BITS[y % DOWN][x % ACROSS];
        }
    }

    void circle(Middle middle, double radius) {
        int steps = Math.max(STEPS, (int) (radius * ACROSS * STEPS));
        for (int step = 0; step < steps; step++) {
            double turn = 2 * Math.PI * step / steps;
            set(middle.x() + radius * Math.sin(turn), middle.y() - radius * Math.cos(turn));
        }
    }

    void line(Middle from, Middle to) {
        double steps = Math.ceil(Math.max(Math.abs(to.x() - from.x()), Math.abs(to.y() - from.y()))) + 1;
        for (int step = 0; step <= steps; step++) {
            double part = step / steps;
            set(from.x() + part * (to.x() - from.x()), from.y() + part * (to.y() - from.y()));
        }
    }

    void render(Rect area, Cells into, Style style) {
        for (int row = 0; row < Math.min(rows, area.rows()); row++) {
            for (int column = 0; column < Math.min(columns, area.columns()); column++) {
                int bits = cells[row * columns + column];
                if (bits != 0) {
                    into.put(area.column() + column, area.row() + row, Character.toString(BLANK + bits), style);
                }
            }
        }
    }
}
