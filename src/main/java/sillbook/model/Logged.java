// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.time.Instant;

/**
 * A temperature at an instant, as its thermometer gave it.
 *
 * @param milli thousandths of a degree Celsius
 * @param isSuspicious whether it can hardly be true; it is kept and shown, and left out of every sum
 * @param source the name of what it was taken in from; empty when it was typed
 * @param line the line it stands on there, counted from 1; 0 when it was typed
 */
public record Logged(Instant at, int milli, boolean isSuspicious, String source, int line) {
    /** One of which nobody asks where it is from. */
    public Logged(Instant at, int milli, boolean isSuspicious) {
        this(at, milli, isSuspicious, "", 0);
    }
}
