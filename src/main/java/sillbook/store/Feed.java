// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

/**
 * Readings of one place, one after the other, as their source has them: in any order, and one instant perhaps more than once. There can be
 * millions, so a feed is a cursor, and makes no object of a reading.
 */
public interface Feed {
    /** Goes on to the next reading; false when there is none. Before the first call it stands on none. */
    boolean advance();

    /** Seconds since 1970-01-01T00:00Z. */
    long at();

    /** Thousandths of a degree Celsius. */
    int milli();

    /** The line it stands on in its source, counted from 1. */
    int line();

    /** Whether it can hardly be true; it is kept, marked, and left out of every sum. */
    boolean isSuspicious();
}
