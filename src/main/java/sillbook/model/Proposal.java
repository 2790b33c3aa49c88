// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A pot as a plan proposes it.
 *
 * @param variety what is to be in it
 * @param bulbs how many
 * @param purchase where they are from; empty while they are to be bought
 * @param container what it is to stand in
 * @param pot the pot it is about, of one that is there already
 * @param course when and where it is to stand
 */
public record Proposal(
        Id<Variety> variety,
        int bulbs,
        Optional<Id<Purchase>> purchase,
        Optional<Id<Container>> container,
        Optional<Id<Pot>> pot,
        Course course) {

    public Proposal {
        if (bulbs < 1) {
            throw new IllegalArgumentException("a pot has at least one bulb, not " + bulbs);
        }
    }

    /**
     * When a pot is to be potted and brought in, and where it stands before and after.
     *
     * @param potting the day it is potted, or was
     * @param cold where it has its cold; empty where it needs none, or no place is written
     * @param in the day it is brought in: out of the cold, or, of a kind that needs none, the day it is potted
     * @param room where it flowers; empty where no place is written
     */
    public record Course(LocalDate potting, Optional<Id<Place>> cold, LocalDate in, Optional<Id<Place>> room) {
        public Course {
            if (potting.isAfter(in)) {
                throw new IllegalArgumentException("brought in on " + in + " and potted after, on " + potting);
            }
        }

        Stream<Id<?>> refersTo() {
            return Stream.concat(cold.stream(), room.stream());
        }
    }

    /** The same pot on other days or at other places. */
    public Proposal on(Course other) {
        return new Proposal(variety, bulbs, purchase, container, pot, other);
    }

    /** The same, about a pot that is there now; or about none. */
    public Proposal about(Optional<Id<Pot>> made) {
        return new Proposal(variety, bulbs, purchase, container, made, course);
    }

    Stream<Id<?>> refersTo() {
        return Stream.of(Stream.of(variety), purchase.stream(), container.stream(), pot.stream(), course.refersTo())
                .flatMap(ids -> ids);
    }
}
