// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * How a pot did, or one variety in a mixed one.
 *
 * @param score 1 to 5
 * @param flowers how many of the bulbs flowered
 * @param signs what was seen to be wrong
 * @param note in the grower's words; may be empty
 */
public record Outcome(
        Id<Outcome> id,
        Id<Pot> pot,
        Optional<Id<Variety>> variety,
        Day day,
        Optional<Integer> score,
        Optional<Integer> flowers,
        Optional<Length> height,
        Optional<LocalDate> firstGood,
        Optional<LocalDate> lastGood,
        Set<Sign> signs,
        Again again,
        String note)
        implements Entity<Outcome> {

    public Outcome {
        signs = Sorted.copyOf(signs);
        score.ifPresent(given -> {
            if (given < 1 || given > 5) {
                throw new IllegalArgumentException("a score is 1 to 5, not " + given);
            }
        });
    }

    /** Signs of a pot that did not do well. */
    public enum Sign {
        LEAVES_ONLY,
        BROWN_BUD,
        SHORT_AND_STUCK,
        FLOPPY,
        ROT,
        NOTHING_CAME,
        FROSTED
    }

    /** Whether the grower would do it again. */
    public enum Again {
        NOT_SAID,
        YES,
        NO,
        DIFFERENTLY
    }

    @Override
    public Stream<Id<?>> refersTo() {
        return Stream.concat(Stream.of(pot), variety.stream());
    }
}
