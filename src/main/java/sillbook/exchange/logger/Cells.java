// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import java.util.Arrays;

/**
 * The cells of one line, as stretches of its bytes: without the blanks around them, and without quotes where they are quoted (RFC 4180,
 * within a line).
 */
final class Cells {
    /** No thermometer writes more columns; what stands beyond is let go. */
    static final int MOST = 256;

    private static final byte QUOTE = '"';

    private final byte separator;
    private final int wanted;
    private final int[] from;
    private final int[] to;
    private byte[] bytes = {};
    private int count;

    /**
     * All cells of a line, or the first.
     *
     * @param wanted how many are taken in at most
     */
    Cells(char separator, int wanted) {
        this.separator = (byte) separator;
        this.wanted = Math.min(wanted, MOST);
        from = new int[this.wanted];
        to = new int[this.wanted];
    }

    void split(Lines line) {
        split(line.bytes(), line.from(), line.to());
    }

    void split(byte[] line, int start, int end) {
        bytes = line;
        count = 0;
        int at = start;
        while (count < wanted) {
            at = skipBlanks(at, end);
            int stop = at < end && line[at] == QUOTE ? quoted(at, end) : bare(at, end);
            if (stop >= end) {
                return;
            }
            at = stop + 1;
        }
    }

    private boolean isBlank(byte character) {
        return (character == ' ' || character == '\t') && character != separator;
    }

    private int skipBlanks(int start, int end) {
        int at = start;
        while (at < end && isBlank(bytes[at])) {
            at++;
        }
        return at;
    }

    /** Takes the cell up to the separator, and gives where that stands. */
    private int bare(int start, int end) {
        int at = start;
        while (at < end && bytes[at] != separator) {
            at++;
        }
        add(start, at);
        return at;
    }

    private int quoted(int start, int end) {
        int at = start + 1;
        while (at < end && bytes[at] != QUOTE) {
            at++;
        }
        int close = at;
        while (at < end && bytes[at] != separator) {
            at++;
        }
        add(start + 1, close);
        return at;
    }

    private void add(int start, int end) {
        int last = end;
        while (last > start && isBlank(bytes[last - 1])) {
            last--;
        }
        from[count] = start;
        to[count] = last;
        count++;
    }

    int count() {
        return count;
    }

    byte[] bytes() {
        return bytes;
    }

    /** Where the cell of that column begins, counted from 0. */
    int from(int column) {
        return from[column];
    }

    int to(int column) {
        return to[column];
    }

    /** Whether there is none, or nothing in it. */
    boolean isBlank(int column) {
        return column >= count || from[column] == to[column];
    }

    byte[] copy(int column) {
        return column < count ? Arrays.copyOfRange(bytes, from[column], to[column]) : new byte[0];
    }
}
