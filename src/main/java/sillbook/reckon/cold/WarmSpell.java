// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.stream.Stream;

/**
 * A stretch all warmer than a bound: to be warned of, never taken off.
 *
 * @param highest in C
 */
public record WarmSpell(Instant from, Instant to, double highest) {
    /** Warmer than this, in C, nothing is worth anything; and for longer than a day it is a spell. */
    static final double ABOVE = ColdWeight.USUAL.gone();

    private static final Duration LONGEST_UNSAID = Duration.ofHours(24);

    /** Warm parts in the order of time: those that follow on each other are one, and those that are long are spells. */
    static List<WarmSpell> joined(Stream<WarmSpell> parts) {
        Deque<WarmSpell> spells = new ArrayDeque<>();
        parts.forEach(part -> {
            boolean goesOn = !spells.isEmpty() && spells.getLast().to().equals(part.from());
            spells.addLast(goesOn ? spells.removeLast().with(part) : part);
        });
        return spells.stream().filter(WarmSpell::isLong).toList();
    }

    private WarmSpell with(WarmSpell more) {
        return new WarmSpell(from, more.to, Math.max(highest, more.highest));
    }

    private boolean isLong() {
        return Duration.between(from, to).compareTo(LONGEST_UNSAID) > 0;
    }
}
