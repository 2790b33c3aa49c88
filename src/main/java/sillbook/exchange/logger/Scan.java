// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

/** A place in a stretch of bytes, from which one thing after the other is read. Used again for each stretch. */
final class Scan {
    private static final int MOST_DIGITS = 9;

    private byte[] bytes = {};
    private int at;
    private int end;
    private int found;

    void begin(byte[] cell, int from, int to) {
        bytes = cell;
        at = from;
        end = to;
    }

    boolean isAtEnd() {
        return at == end;
    }

    /** How many bytes are left. */
    int left() {
        return end - at;
    }

    /** The byte that stands there; 0 at the end. */
    byte here() {
        return at < end ? bytes[at] : 0;
    }

    /** The byte that stands so far on; 0 beyond the end. */
    byte ahead(int distance) {
        return at + distance < end ? bytes[at + distance] : 0;
    }

    void pass(int count) {
        at += count;
    }

    /** Goes past this byte, and says whether it stood there. */
    boolean passes(char character) {
        boolean isThere = at < end && bytes[at] == character;
        at += isThere ? 1 : 0;
        return isThere;
    }

    /** Goes past blanks, and gives how many. */
    int passBlanks() {
        int start = at;
        while (at < end && bytes[at] == ' ') {
            at++;
        }
        return at - start;
    }

    /** Reads digits into {@link #found}, and gives how many there are; of very many some. */
    int number() {
        int start = at;
        int value = 0;
        while (at < end && isDigit(bytes[at]) && at - start < MOST_DIGITS) {
            value = value * 10 + bytes[at++] - '0';
        }
        found = value;
        return at - start;
    }

    /** The number that was read last. */
    int found() {
        return found;
    }

    void passDigits() {
        while (at < end && isDigit(bytes[at])) {
            at++;
        }
    }

    static boolean isDigit(byte character) {
        return character >= '0' && character <= '9';
    }

    /** Whether this word stands there, in any case; it is written in small letters. */
    boolean isWord(String word) {
        for (int i = 0; i < word.length(); i++) {
            if ((ahead(i) | 0x20) != word.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    /** Goes past a minus, also a long one, or a plus: -1 or 1; 0 where neither stands there. */
    int sign() {
        if (Glyphs.isLongMinus(bytes, at, end)) {
            at += Glyphs.LONG_MINUS_BYTES;
            return -1;
        }
        return passes('-') ? -1 : passes('+') ? 1 : 0;
    }
}
