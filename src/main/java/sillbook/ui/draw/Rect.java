// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

/** A part of the screen, counted from 0 at the upper left; may be empty, and may lie partly outside: drawing is clipped. */
public record Rect(int column, int row, int columns, int rows) {
    public Rect {
        columns = Math.max(0, columns);
        rows = Math.max(0, rows);
    }

    public boolean isEmpty() {
        return columns == 0 || rows == 0;
    }

    public int right() {
        return column + columns;
    }

    public int bottom() {
        return row + rows;
    }

    public Size size() {
        return new Size(columns, rows);
    }

    public boolean contains(int otherColumn, int otherRow) {
        return otherColumn >= column && otherColumn < right() && otherRow >= row && otherRow < bottom();
    }

    /** One line of it, counted from its own top; empty when it has no such line. */
    public Rect line(int index) {
        return lines(index, 1);
    }

    /** Some lines of it, counted from its own top, as far as it has them. */
    public Rect lines(int from, int count) {
        int first = Math.max(0, from);
        int after = Math.min(rows, from + count);
        return new Rect(column, row + first, columns, after - first);
    }

    public Rect withoutTop(int count) {
        return lines(count, rows - count);
    }

    public Rect withoutBottom(int count) {
        return lines(0, rows - count);
    }

    /** Some columns of it, counted from its own left, as far as it has them. */
    public Rect columns(int from, int count) {
        int first = Math.max(0, from);
        int after = Math.min(columns, from + count);
        return new Rect(column + first, row, after - first, rows);
    }

    public Rect withoutLeft(int count) {
        return columns(count, columns - count);
    }

    public Rect intersect(Rect other) {
        int left = Math.max(column, other.column);
        int top = Math.max(row, other.row);
        return new Rect(left, top, Math.min(right(), other.right()) - left, Math.min(bottom(), other.bottom()) - top);
    }
}
