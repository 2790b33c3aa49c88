// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import sillbook.text.Width;

/**
 * Writes for a terminal in the fewest bytes: it knows where the terminal's cursor stands and how it paints, and says only what changes.
 * Control sequences are those of ECMA-48.
 */
final class Pen {
    private static final int NOT_KNOWN = -1;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private int column = NOT_KNOWN;
    private int row = NOT_KNOWN;
    private int paint = Paints.PLAIN;

    /** What was written since the last time. */
    byte[] take() {
        byte[] written = out.toByteArray();
        out.reset();
        return written;
    }

    void raw(String sequence) {
        raw(sequence.getBytes(StandardCharsets.US_ASCII));
    }

    void raw(byte[] bytes) {
        out.write(bytes, 0, bytes.length);
    }

    /** Empties the terminal; after this its paint is plain, and its cursor anywhere. */
    void clear() {
        raw("\u001B[m\u001B[2J");
        column = NOT_KNOWN;
        paint = Paints.PLAIN;
    }

    void moveTo(int toColumn, int toRow) {
        boolean onLine = column != NOT_KNOWN && row == toRow;
        if (onLine && column == toColumn) {
            return;
        }
        raw(onLine && column < toColumn ? forward(toColumn - column) : absolute(toColumn, toRow));
        column = toColumn;
        row = toRow;
    }

    void paint(int wanted, Paints paints) {
        if (paint != wanted) {
            raw(paints.change(paint, wanted));
            paint = wanted;
        }
    }

    int paint() {
        return paint;
    }

    /** The column on this line the next character would come to, or the given one where that is not known. */
    int columnOn(int line, int otherwise) {
        return column != NOT_KNOWN && row == line ? column : otherwise;
    }

    /** Writes a character; where the cursor is at the edge, or after a character whose width terminals do not agree on, is not known. */
    void put(int codePoint, int columns) {
        encode(codePoint);
        column += Width.of(codePoint);
        if (column >= columns || Width.isDoubtful(codePoint)) {
            column = NOT_KNOWN;
        }
    }

    void eraseRestOfLine() {
        raw("\u001B[K");
    }

    /** UTF-8 (RFC 3629). */
    private void encode(int codePoint) {
        if (codePoint < 0x80) {
            out.write(codePoint);
        } else if (codePoint < 0x800) {
            out.write(0xC0 | codePoint >> 6);
            out.write(continuation(codePoint));
        } else if (codePoint < 0x10000) {
            out.write(0xE0 | codePoint >> 12);
            out.write(continuation(codePoint >> 6));
            out.write(continuation(codePoint));
        } else {
            out.write(0xF0 | codePoint >> 18);
            out.write(continuation(codePoint >> 12));
            out.write(continuation(codePoint >> 6));
            out.write(continuation(codePoint));
        }
    }

    private static int continuation(int bits) {
        return 0x80 | (bits & 0x3F);
    }

    private static String forward(int columns) {
        return columns == 1 ? "\u001B[C" : "\u001B[" + columns + "C";
    }

    private static String absolute(int column, int row) {
        String columnPart = column == 0 ? "" : ";" + (column + 1);
        String rowPart = row == 0 ? "" : String.valueOf(row + 1);
        return "\u001B[" + rowPart + columnPart + "H";
    }
}
