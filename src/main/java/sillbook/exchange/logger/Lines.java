// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;

/**
 * The lines of a file one after the other, each a stretch of one array that is used again. A line ends with LF, CR LF or CR. What is longer
 * than any table's line is given in pieces.
 */
final class Lines implements Closeable {
    private static final int CAPACITY = 1 << 18;

    private final InputStream in;
    private final byte[] bytes = new byte[CAPACITY];
    private int filled;
    private int next;
    private int from;
    private int to;
    private int number;
    private boolean afterReturn;

    Lines(InputStream in) {
        this.in = in;
    }

    /** Goes on to the next line; false when there is none. */
    boolean advance() {
        try {
            return !isAtEnd() && take();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private boolean isAtEnd() throws IOException {
        from = next;
        if (next == filled && !fill()) {
            return true;
        }
        if (afterReturn && bytes[next] == '\n') {
            next++;
        }
        afterReturn = false;
        from = next;
        return next == filled && !fill();
    }

    private boolean take() throws IOException {
        to = end(next);
        boolean hasMore = true;
        while (to == filled && hasMore) {
            hasMore = fill();
            to = end(next);
        }
        number++;
        next = Math.min(to + 1, filled);
        afterReturn = to < filled && bytes[to] == '\r';
        return true;
    }

    private int end(int start) {
        int at = start;
        while (at < filled && bytes[at] != '\n' && bytes[at] != '\r') {
            at++;
        }
        return at;
    }

    /** Reads on behind what is not given yet, which begins at {@code from}; leaves {@code next} where it is to be looked on from. */
    private boolean fill() throws IOException {
        if (from > 0) {
            System.arraycopy(bytes, from, bytes, 0, filled - from);
            filled -= from;
            from = 0;
        }
        next = filled;
        int count = filled < CAPACITY ? in.read(bytes, filled, CAPACITY - filled) : 0;
        filled += Math.max(count, 0);
        return count > 0;
    }

    byte[] bytes() {
        return bytes;
    }

    /** Where the line begins. */
    int from() {
        return from;
    }

    /** Where its end stands, which is no part of it. */
    int to() {
        return to;
    }

    /** Of the line, counted from 1. */
    int number() {
        return number;
    }

    byte[] copy() {
        return Arrays.copyOfRange(bytes, from, to);
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
