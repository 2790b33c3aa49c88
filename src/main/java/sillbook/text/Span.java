// SPDX-License-Identifier: Apache-2.0
package sillbook.text;

/** A stretch of columns on one line. */
public record Span(int fromInclusive, int toExclusive) {
    public Span {
        if (fromInclusive < 0 || toExclusive < fromInclusive) {
            throw new IllegalArgumentException("no span from " + fromInclusive + " to " + toExclusive);
        }
    }

    public int columns() {
        return toExclusive - fromInclusive;
    }
}
