// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.util.Optional;
import sillbook.text.Width;
import sillbook.ui.draw.Alphabet;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Frame;
import sillbook.ui.draw.Palette;
import sillbook.ui.draw.Point;

/**
 * From one frame to the next in as few bytes as can be: only cells that look different are written. Nothing is cleared between frames; a
 * whole picture is written only at first, after a change of size, and when asked for.
 */
final class FrameWriter {
    /** Terminals that know these two show a frame at once; others pass them over. */
    private static final String FRAME_BEGINS = "\u001B[?2026h";

    private static final String FRAME_ENDS = "\u001B[?2026l";
    private static final String SHOW_CURSOR = "\u001B[?25h";
    private static final String HIDE_CURSOR = "\u001B[?25l";
    /** Cells between two changed ones are written again rather than passed over while that takes no more bytes. */
    private static final int BRIDGE_BYTES = 3;

    private final Pen pen = new Pen();
    private final Paints paints;
    private Optional<Picture> before = Optional.empty();
    private boolean cursorShown;

    FrameWriter(Palette palette) {
        paints = new Paints(palette);
    }

    /** A frame's cells, and the numbers of their paints. */
    private static final class Picture {
        private final Cells cells;
        private final int[] paints;

        Picture(Cells cells, Paints numbered) {
            this.cells = cells;
            paints = numbered.numbers(cells);
        }

        boolean isAsLargeAs(Cells others) {
            return cells.size().columns() == others.size().columns()
                    && cells.size().rows() == others.size().rows();
        }

        int codePoint(int column, int row) {
            return cells.codePoint(column, row);
        }

        int paint(int column, int row) {
            return paints[row * cells.size().columns() + column];
        }
    }

    /** The next frame will be written whole. */
    void forget() {
        before = Optional.empty();
    }

    /** The bytes that bring the terminal from the frame before to this one; none when nothing is to be seen of it. */
    byte[] write(Frame frame) {
        Cells cells = frame.cells();
        Picture next = new Picture(cells, paints);
        Optional<Picture> known = before.filter(last -> last.isAsLargeAs(cells));
        byte[] opening = known.isEmpty() ? clear() : new byte[0];
        Picture last = known.orElseGet(() -> new Picture(Cells.blank(cells.size(), Alphabet.ASCII), paints));
        for (int row = 0; row < cells.size().rows(); row++) {
            new Line(last, next, row).write();
        }
        before = Optional.of(next);
        byte[] body = pen.take();
        placeCursor(frame.cursor());
        return framed(opening, body, pen.take());
    }

    private byte[] clear() {
        cursorShown = false;
        pen.raw(HIDE_CURSOR);
        pen.clear();
        return pen.take();
    }

    private void placeCursor(Optional<Point> cursor) {
        cursor.ifPresent(point -> pen.moveTo(point.column(), point.row()));
        if (cursor.isPresent() != cursorShown) {
            pen.raw(cursor.isPresent() ? SHOW_CURSOR : HIDE_CURSOR);
            cursorShown = cursor.isPresent();
        }
    }

    /** The marks are worth their bytes where a terminal could otherwise be seen at work. */
    private static byte[] framed(byte[] opening, byte[] body, byte[] closing) {
        boolean brief = opening.length == 0 && body.length <= FRAME_BEGINS.length() + FRAME_ENDS.length();
        Pen frame = new Pen();
        frame.raw(brief ? "" : FRAME_BEGINS);
        frame.raw(opening);
        frame.raw(body);
        frame.raw(closing);
        frame.raw(brief ? "" : FRAME_ENDS);
        return frame.take();
    }

    /** One line on its way from the frame before to the next. */
    private final class Line {
        private final Picture last;
        private final Picture next;
        private final int row;
        private final int columns;

        Line(Picture last, Picture next, int row) {
            this.last = last;
            this.next = next;
            this.row = row;
            columns = next.cells.size().columns();
        }

        void write() {
            int bareFrom = bareFrom();
            for (int column = 0; column < columns; column++) {
                if (looksTheSame(column)) {
                    continue;
                }
                if (column >= bareFrom) {
                    eraseFrom(column);
                    return;
                }
                writeCell(column);
            }
        }

        private boolean looksTheSame(int column) {
            int codePoint = next.codePoint(column, row);
            int was = last.paint(column, row);
            int is = next.paint(column, row);
            return codePoint == last.codePoint(column, row)
                    && (was == is || (codePoint == ' ' && paints.leaveBlanksAlike(was, is)));
        }

        /** The column from which on nothing but bare blanks stands. */
        private int bareFrom() {
            int from = columns;
            while (from > 0 && next.codePoint(from - 1, row) == ' ' && paints.isBare(next.paint(from - 1, row))) {
                from--;
            }
            return from;
        }

        private void eraseFrom(int column) {
            pen.moveTo(column, row);
            if (!paints.isBare(pen.paint())) {
                pen.paint(next.paint(column, row), paints);
            }
            pen.eraseRestOfLine();
        }

        /** The second half of a wide character comes with its first. */
        private void writeCell(int column) {
            if (next.codePoint(column, row) == 0) {
                return;
            }
            bridgeTo(column);
            pen.moveTo(column, row);
            put(column);
        }

        private void put(int column) {
            int codePoint = next.codePoint(column, row);
            int wanted = next.paint(column, row);
            if (codePoint != ' ' || !paints.leaveBlanksAlike(pen.paint(), wanted)) {
                pen.paint(wanted, paints);
            }
            pen.put(codePoint, columns);
        }

        private void bridgeTo(int column) {
            int from = pen.columnOn(row, column);
            int bytes = 0;
            for (int between = from; between < column && bytes <= BRIDGE_BYTES; between++) {
                bytes += fitsThePen(between) ? utf8Length(next.codePoint(between, row)) : BRIDGE_BYTES + 1;
            }
            for (int between = from; between < column && bytes <= BRIDGE_BYTES; between++) {
                put(between);
            }
        }

        private boolean fitsThePen(int column) {
            int codePoint = next.codePoint(column, row);
            boolean sure = codePoint != 0 && Width.of(codePoint) == 1;
            int wanted = next.paint(column, row);
            boolean asBlank = codePoint == ' ' && paints.leaveBlanksAlike(pen.paint(), wanted);
            return sure && (pen.paint() == wanted || asBlank);
        }
    }

    private static int utf8Length(int codePoint) {
        if (codePoint < 0x80) {
            return 1;
        }
        return codePoint < 0x800 ? 2 : 3;
    }
}
