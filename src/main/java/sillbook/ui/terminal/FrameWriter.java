// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import sillbook.text.Width;
import sillbook.ui.draw.Alphabet;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Frame;
import sillbook.ui.draw.Paint;
import sillbook.ui.draw.Palette;
import sillbook.ui.draw.Point;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;

/**
 * From one frame to the next in as few bytes as can be: only cells that look different are written. Nothing is cleared between frames; a
 * whole picture is written only at first, after a change of size or palette, and when asked for.
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
    private final Map<Style, Paint> paints = new HashMap<>();
    private Optional<Cells> before = Optional.empty();
    private Optional<Palette> palette = Optional.empty();
    private boolean cursorShown;

    /** The next frame will be written whole. */
    void forget() {
        before = Optional.empty();
    }

    /** The bytes that bring the terminal from the frame before to this one; none when nothing is to be seen of it. */
    byte[] write(Frame frame, Palette with) {
        Cells cells = frame.cells();
        choose(with);
        boolean whole = before.filter(last -> last.size().equals(cells.size())).isEmpty();
        byte[] opening = whole ? clear() : new byte[0];
        Cells last = whole ? Cells.blank(cells.size(), Alphabet.ASCII) : before.orElseThrow();
        for (int row = 0; row < cells.size().rows(); row++) {
            new Line(last, cells, row).write();
        }
        before = Optional.of(cells);
        byte[] body = pen.take();
        placeCursor(frame.cursor());
        return framed(opening, body, pen.take());
    }

    private void choose(Palette with) {
        if (!palette.equals(Optional.of(with))) {
            palette = Optional.of(with);
            paints.clear();
            before = Optional.empty();
        }
    }

    private byte[] clear() {
        cursorShown = false;
        pen.raw(HIDE_CURSOR);
        pen.clear();
        return pen.take();
    }

    private void placeCursor(Optional<Point> cursor) {
        cursor.ifPresent(pen::moveTo);
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
        frame.bytes(opening);
        frame.bytes(body);
        frame.bytes(closing);
        frame.raw(brief ? "" : FRAME_ENDS);
        return frame.take();
    }

    private Paint paint(Style style) {
        return paints.computeIfAbsent(style, it -> palette.orElseThrow().paint(it));
    }

    /** One line on its way from the frame before to the next. */
    private final class Line {
        private final Cells last;
        private final Cells next;
        private final int row;
        private final Size size;

        Line(Cells last, Cells next, int row) {
            this.last = last;
            this.next = next;
            this.row = row;
            size = next.size();
        }

        void write() {
            int bareFrom = bareFrom();
            for (int column = 0; column < size.columns(); column++) {
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
            if (codePoint != last.codePoint(column, row)) {
                return false;
            }
            Paint was = paint(last.style(column, row));
            Paint is = paint(next.style(column, row));
            return was.equals(is) || (codePoint == ' ' && Blanks.lookAlike(was, is));
        }

        /** The column from which on nothing but bare blanks stands. */
        private int bareFrom() {
            int from = size.columns();
            while (from > 0 && next.codePoint(from - 1, row) == ' ' && Blanks.isBare(paintAt(from - 1))) {
                from--;
            }
            return from;
        }

        private void eraseFrom(int column) {
            pen.moveTo(new Point(column, row));
            Paint bare = paintAt(column);
            if (!pen.leavesBlanksAs(bare)) {
                pen.paint(bare);
            }
            pen.eraseRestOfLine();
        }

        /** The second half of a wide character comes with its first. */
        private void writeCell(int column) {
            if (next.codePoint(column, row) == 0) {
                return;
            }
            bridgeTo(column);
            pen.moveTo(new Point(column, row));
            put(column);
        }

        private void put(int column) {
            int codePoint = next.codePoint(column, row);
            Paint wanted = paintAt(column);
            if (codePoint != ' ' || !pen.leavesBlanksAs(wanted)) {
                pen.paint(wanted);
            }
            pen.put(codePoint, size.columns());
        }

        private void bridgeTo(int column) {
            int from = pen.place()
                    .filter(place -> place.row() == row)
                    .map(Point::column)
                    .orElse(column);
            int bytes = 0;
            for (int between = from; between < column; between++) {
                bytes += fitsThePen(between) ? utf8Length(next.codePoint(between, row)) : BRIDGE_BYTES + 1;
            }
            if (bytes > 0 && bytes <= BRIDGE_BYTES) {
                for (int between = from; between < column; between++) {
                    put(between);
                }
            }
        }

        private boolean fitsThePen(int column) {
            int codePoint = next.codePoint(column, row);
            boolean sure = codePoint != 0 && Width.of(codePoint) == 1;
            Paint wanted = paintAt(column);
            return sure && (pen.isPainting(wanted) || (codePoint == ' ' && pen.leavesBlanksAs(wanted)));
        }

        private Paint paintAt(int column) {
            return paint(next.style(column, row));
        }
    }

    private static int utf8Length(int codePoint) {
        if (codePoint < 0x80) {
            return 1;
        }
        return codePoint < 0x800 ? 2 : 3;
    }
}
