// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

/** How large a screen or a drawing is, in cells; either side may be 0. */
public record Size(int columns, int rows) {
    public Size {
        if (columns < 0 || rows < 0) {
            throw new IllegalArgumentException("no size of " + columns + "x" + rows);
        }
    }

    public Rect area() {
        return new Rect(0, 0, columns, rows);
    }

    /** Whether this is at least as large both ways. */
    public boolean holds(Size other) {
        return columns >= other.columns && rows >= other.rows;
    }

    /** As terminals are spoken of: {@code 80x24}. */
    @Override
    public String toString() {
        return columns + "x" + rows;
    }
}
