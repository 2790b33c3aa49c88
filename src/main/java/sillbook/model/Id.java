// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

/**
 * A permanent name of 128 bits. Two copies of a journal can be merged because no id is ever given twice.
 *
 * @param <T> what it names; only a mark for the compiler
 */
// The parameter is a mark for the compiler only: an Id<Pot> is never taken for an Id<Place>.
@SuppressWarnings("UnusedTypeParameter")
public record Id<T>(long high, long low) implements Comparable<Id<?>> {
    private static final int HEX_DIGITS = 32;

    /** Reads the 32 hexadecimal digits that {@link #toString()} writes. */
    public static <T> Id<T> parse(String hex) {
        if (hex.length() != HEX_DIGITS) {
            throw new IllegalArgumentException("an id has 32 hexadecimal digits: " + hex);
        }
        return new Id<>(Long.parseUnsignedLong(hex, 0, 16, 16), Long.parseUnsignedLong(hex, 16, HEX_DIGITS, 16));
    }

    @Override
    public int compareTo(Id<?> other) {
        int byHigh = Long.compareUnsigned(high, other.high);
        return byHigh != 0 ? byHigh : Long.compareUnsigned(low, other.low);
    }

    @Override
    public String toString() {
        return digits(high) + digits(low);
    }

    // Ids are the keys of every map, and what a record does by itself is worked out anew at each start of the program.

    @Override
    public boolean equals(Object other) {
        return other instanceof Id<?> that && high == that.high && low == that.low;
    }

    @Override
    public int hashCode() {
        return 31 * Long.hashCode(high) + Long.hashCode(low);
    }

    private static String digits(long half) {
        String hex = Long.toHexString(half);
        return "0".repeat(HEX_DIGITS / 2 - hex.length()) + hex;
    }
}
