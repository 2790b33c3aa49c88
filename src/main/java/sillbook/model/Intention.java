// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is meant to be done with a pot, by the plan that was adopted. What really happens stands in its history.
 *
 * @param plan the plan it is from
 */
public record Intention(Id<Intention> id, Id<Pot> pot, Id<SeasonPlan> plan, Proposal.Course course)
        implements Entity<Intention> {

    /** What is meant to be done with a pot; empty where no plan was adopted for it. */
    public static Optional<Intention> of(Id<Pot> pot, Journal journal) {
        return journal.intentions().all().stream()
                .filter(meant -> meant.pot().equals(pot))
                .findFirst();
    }

    /** What is meant by a plan, in no order; nothing by one that is not adopted. */
    public static Stream<Intention> by(Id<?> plan, Journal journal) {
        return journal.intentions().all().stream().filter(meant -> meant.plan().equals(plan));
    }

    @Override
    public Stream<Id<?>> refersTo() {
        return Stream.concat(Stream.of(pot, plan), course.refersTo());
    }
}
