// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

/** The signs beyond ASCII that stand in thermometers' files, told from their bytes in UTF-8 and in the one-byte codes. */
final class Glyphs {
    /** Of U+2212 and of the dashes, in UTF-8. */
    static final int LONG_MINUS_BYTES = 3;

    /** The dash that stands for a minus in the one-byte code of Windows. */
    static final byte WINDOWS_DASH = (byte) 0x96;

    private static final int MINUS_SIGN = 0xE28892;
    private static final int EN_DASH = 0xE28093;
    private static final int NARROW_BLANK = 0xE280AF;
    private static final int THIN_BLANK = 0xE28089;
    private static final int HARD_BLANK = 0xC2A0;
    private static final byte ONE_BYTE_BLANK = (byte) 0xA0;

    private Glyphs() {}

    static boolean isLongMinus(byte[] bytes, int at, int end) {
        if (at + LONG_MINUS_BYTES > end || bytes[at] != (byte) 0xE2) {
            return false;
        }
        int sign = three(bytes, at);
        return sign == MINUS_SIGN || sign == EN_DASH;
    }

    private static int two(byte[] bytes, int at) {
        return ((bytes[at] & 0xFF) << 8) | (bytes[at + 1] & 0xFF);
    }

    private static int three(byte[] bytes, int at) {
        return (two(bytes, at) << 8) | (bytes[at + 2] & 0xFF);
    }

    /**
     * How many bytes the sign between groups of digits takes that stands there; 0 where none does.
     *
     * @param decimal the decimal sign, which never parts groups
     */
    static int groupBytes(byte[] bytes, int at, int end, byte decimal) {
        byte first = bytes[at];
        if (first == ',' || first == '.') {
            return first == decimal ? 0 : 1;
        }
        return first == '\'' ? 1 : blankBytes(bytes, at, end);
    }

    private static int blankBytes(byte[] bytes, int at, int end) {
        if (bytes[at] == ' ' || bytes[at] == ONE_BYTE_BLANK) {
            return 1;
        }
        if (at + 2 <= end && two(bytes, at) == HARD_BLANK) {
            return 2;
        }
        if (at + 3 <= end) {
            int sign = three(bytes, at);
            return sign == NARROW_BLANK || sign == THIN_BLANK ? 3 : 0;
        }
        return 0;
    }

    /** {@code C} or {@code F} where all that stands there is a unit of temperature ({@code °C}, {@code degF}, {@code oC}); else 0. */
    static byte unit(byte[] bytes, int from, int to) {
        int at = from;
        while (at < to && blankBytes(bytes, at, to) > 0) {
            at += blankBytes(bytes, at, to);
        }
        at = afterDegree(bytes, at, to);
        int letter = at < to ? bytes[at] & ~0x20 : 0;
        return at + 1 == to && (letter == 'C' || letter == 'F') ? (byte) letter : 0;
    }

    /** Past a degree sign, its likenesses, and whatever a wrong code has made of it: up to three bytes beyond ASCII, or letters for it. */
    private static int afterDegree(byte[] bytes, int from, int to) {
        int at = from;
        while (at < to && at < from + 3 && bytes[at] < 0) {
            at++;
        }
        if (at + 3 < to
                && (bytes[at] | 0x20) == 'd'
                && (bytes[at + 1] | 0x20) == 'e'
                && (bytes[at + 2] | 0x20) == 'g') {
            at += 3;
        } else if (at + 1 < to && bytes[at] == 'o') {
            at++;
        }
        while (at < to && bytes[at] == ' ') {
            at++;
        }
        return at;
    }
}
