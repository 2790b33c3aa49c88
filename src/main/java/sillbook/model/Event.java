// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Something that happened on a day, and when it was written down.
 *
 * @param order its place among the events of the same day
 * @param writtenAt when it was first written down
 * @param revisedAt when it was last corrected
 */
public record Event(
        Id<Event> id,
        Subject subject,
        Day day,
        int order,
        Instant writtenAt,
        Optional<Instant> revisedAt,
        Happening what)
        implements Entity<Event> {

    /** The order history is read in: the day, the order within it, when it was written, the id. */
    public static final Comparator<Event> BY_HISTORY = Comparator.comparing(Event::day)
            .thenComparingInt(Event::order)
            .thenComparing(Event::writtenAt)
            .thenComparing(Event::id);

    @Override
    public Stream<Id<?>> refersTo() {
        return Stream.concat(subject.refersTo(), what.refersTo());
    }
}
