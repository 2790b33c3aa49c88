// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

import java.time.Duration;
import java.time.Instant;

/**
 * A stretch all warmer than a bound: to be warned of, never taken off.
 *
 * @param highest in C
 */
public record WarmSpell(Instant from, Instant to, double highest) {
    /** Warmer than this, in C, nothing is worth anything; and for longer than a day it is a spell. */
    static final double ABOVE = ColdWeight.USUAL.gone();

    static final Duration LONGEST_UNSAID = Duration.ofHours(24);

    /** The same and the part that follows on it. */
    WarmSpell with(WarmSpell more) {
        return new WarmSpell(from, more.to, Math.max(highest, more.highest));
    }

    boolean isLong() {
        return Duration.between(from, to).compareTo(LONGEST_UNSAID) > 0;
    }
}
