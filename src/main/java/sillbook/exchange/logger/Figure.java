// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

/**
 * A figure as files write it, read from its bytes: a sign (also U+2212 or a dash), digits, perhaps in groups of three, a decimal sign, more
 * digits, a power of ten, a unit. Holds the last one that was read, so that none is made for each line.
 */
final class Figure {
    /** Millionths in one. */
    static final long ONE = 1_000_000;

    private static final int MOST_DIGITS = 9;
    private static final int LARGEST_POWER = 9;

    private final byte decimal;
    private byte[] bytes = {};
    private int at;
    private int end;
    private int digits;
    private long micro;
    private byte unit;

    Figure(char decimal) {
        this.decimal = (byte) decimal;
    }

    /** Reads what stands from one place up to another; false where that is no figure. */
    boolean read(byte[] cell, int from, int to) {
        bytes = cell;
        at = from;
        end = to;
        unit = 0;
        digits = 0;
        boolean negative = sign();
        micro = whole() * ONE;
        if (at < end && bytes[at] == decimal) {
            at++;
            micro += fraction();
        }
        if (digits == 0 || digits > MOST_DIGITS + 6) {
            return false;
        }
        if (at < end && !power()) {
            return false;
        }
        micro = negative ? -micro : micro;
        return at == end || unit();
    }

    /** Goes past a sign, and says whether it is a minus. */
    private boolean sign() {
        if (at >= end) {
            return false;
        }
        byte first = bytes[at];
        if (first == '-' || first == '+') {
            at++;
            return first == '-';
        }
        if (Glyphs.isLongMinus(bytes, at, end)) {
            at += Glyphs.LONG_MINUS_BYTES;
            return true;
        }
        if (first == Glyphs.WINDOWS_DASH) {
            at++;
            return true;
        }
        return false;
    }

    private long whole() {
        long value = 0;
        while (at < end) {
            int digit = bytes[at] - '0';
            if (digit >= 0 && digit <= 9) {
                value = digits < MOST_DIGITS ? value * 10 + digit : value;
                digits++;
                at++;
            } else {
                int group = group();
                if (group == 0) {
                    return value;
                }
                at += group;
            }
        }
        return value;
    }

    /** How many bytes part groups of three digits here; 0 where none do. */
    private int group() {
        if (digits == 0 || (digits > 3 && !isGrouped())) {
            return 0;
        }
        int length = Glyphs.groupBytes(bytes, at, end, decimal);
        return length > 0 && areThreeDigits(at + length) ? length : 0;
    }

    /** Whether the digits before go in groups already: then three of them stand behind a sign. */
    private boolean isGrouped() {
        return at >= 4 && !isDigit(at - 4);
    }

    private boolean areThreeDigits(int start) {
        return start + 3 <= end
                && isDigit(start)
                && isDigit(start + 1)
                && isDigit(start + 2)
                && (start + 3 == end || !isDigit(start + 3));
    }

    private boolean isDigit(int place) {
        return bytes[place] >= '0' && bytes[place] <= '9';
    }

    /** Millionths after the decimal sign; what is smaller is let go. */
    private long fraction() {
        long value = 0;
        long place = ONE / 10;
        while (at < end && isDigit(at)) {
            value += place * (bytes[at] - '0');
            place /= 10;
            digits = Math.min(digits + 1, MOST_DIGITS);
            at++;
        }
        return value;
    }

    /** Applies a power of ten, where one is written; false where it is none. */
    private boolean power() {
        if (bytes[at] != 'e' && bytes[at] != 'E') {
            return true;
        }
        at++;
        boolean isNegative = sign();
        int power = 0;
        int start = at;
        while (at < end && isDigit(at) && power <= LARGEST_POWER) {
            power = power * 10 + bytes[at++] - '0';
        }
        if (at == start || power > LARGEST_POWER) {
            return false;
        }
        for (int i = 0; i < power && Math.abs(micro) < Long.MAX_VALUE / 10; i++) {
            micro = isNegative ? micro / 10 : micro * 10;
        }
        return true;
    }

    /** Reads a unit behind the figure, to its end. */
    private boolean unit() {
        unit = Glyphs.unit(bytes, at, end);
        return unit != 0;
    }

    /** The figure, in millionths. */
    long micro() {
        return micro;
    }

    /** {@code C} or {@code F} where that stood behind the figure, else 0. */
    byte unitSaid() {
        return unit;
    }
}
