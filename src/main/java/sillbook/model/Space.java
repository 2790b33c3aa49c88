// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * The shelf of a place that pots stand on, and the days of the year on which the place is there at all.
 *
 * @param clear height above it, where something is over it
 * @param there as a frame that is put up in autumn, or a window that is wanted for other things
 */
public record Space(
        Id<Space> id, Id<Place> place, Optional<Surface> shelf, Optional<Length> clear, Place.ColdDays there)
        implements Entity<Space> {

    /** An oblong to stand pots on, its depth from front to back. */
    public record Surface(Length width, Length depth) {
        public Surface {
            if (width.tenths() < 1 || depth.tenths() < 1) {
                throw new IllegalArgumentException("a shelf of " + width + " by " + depth);
            }
        }
    }

    /** The shelf of a place, and when it is there; empty where that is not written down. */
    public static Optional<Space> of(Id<Place> place, Journal journal) {
        return journal.spaces().all().stream()
                .filter(space -> space.place().equals(place))
                .findFirst();
    }

    @Override
    public Stream<Id<?>> refersTo() {
        return Stream.of(place);
    }
}
