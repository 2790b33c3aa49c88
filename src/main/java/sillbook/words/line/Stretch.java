// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

/** A stretch of a line, counted in UTF-16 units as {@code String} counts. */
public record Stretch(int fromInclusive, int toExclusive) {
    public Stretch {
        if (fromInclusive < 0 || toExclusive < fromInclusive) {
            throw new IllegalArgumentException("no stretch from " + fromInclusive + " to " + toExclusive);
        }
    }

    public boolean contains(int index) {
        return index >= fromInclusive && index < toExclusive;
    }

    /** The text of the line that stands there. */
    public String of(String line) {
        return line.substring(fromInclusive, toExclusive);
    }
}
