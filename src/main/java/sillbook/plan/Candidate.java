// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.Optional;
import sillbook.model.Container;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Proposal;
import sillbook.model.Proposal.Course;
import sillbook.model.Purchase;
import sillbook.model.Variety;
import sillbook.reckon.dates.Dates;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.Forcing;

/**
 * A pot that could be in a plan.
 *
 * @param bulbs in it
 * @param purchase where they are from; empty while they are to be bought
 * @param container what it would stand in; empty where none of a size is known
 * @param pot the pot, of one that is there already
 * @param forcing what it takes
 * @param readyFrom the first day it could be potted
 * @param fit when it can be potted for a day of coming in
 * @param cold of a pot that stands in the cold, where, since when, and on which days it may come in
 * @param settled of a pot that is out of the cold, what is no longer to be chosen
 */
public record Candidate(
        Variety variety,
        int bulbs,
        Optional<Id<Purchase>> purchase,
        Optional<Id<Container>> container,
        Optional<Id<Pot>> pot,
        Forcing forcing,
        LocalDate readyFrom,
        ColdFit fit,
        Optional<InCold> cold,
        Optional<Settled> settled) {

    /** A pot that stands in the cold. */
    public record InCold(LocalDate potted, Optional<Id<Place>> place, DaySpan in) {}

    /**
     * A pot that is out of the cold.
     *
     * @param flowers the days in flower
     */
    public record Settled(Course course, DaySpan flowers) {}

    /** A pot that is still to be made. */
    static Candidate made(
            Variety variety,
            int bulbs,
            Optional<Id<Purchase>> purchase,
            Optional<Id<Container>> container,
            Forcing forcing,
            LocalDate readyFrom,
            ColdFit fit) {
        return new Candidate(
                variety,
                bulbs,
                purchase,
                container,
                Optional.empty(),
                forcing,
                readyFrom,
                fit,
                Optional.empty(),
                Optional.empty());
    }

    /** Whether its day is still to be chosen. */
    boolean isOpen() {
        return settled.isEmpty();
    }

    /** Whether it flowers only after a time in the cold. */
    public boolean needsCold() {
        return forcing.cold().isPresent();
    }

    /** From the first day on which it may come in to the last, of some days; empty when on none. */
    Optional<DaySpan> in(DaySpan days) {
        if (cold.isPresent()) {
            return cold.get().in().intersection(days);
        }
        if (needsCold()) {
            return fit.in().flatMap(may -> may.intersection(days));
        }
        LocalDate first = Dates.later(readyFrom, forcing.potting().earliest());
        LocalDate last = forcing.potting().latest();
        return first.isAfter(last)
                ? Optional.empty()
                : DaySpan.ofInclusive(first, last).intersection(days);
    }

    /** It, going that course. */
    Proposal on(Course course) {
        return new Proposal(variety.id(), bulbs, purchase, container, pot, course);
    }

    /** Whether a proposal is of such a pot: the same pot, or else a new one of the same bulbs. */
    boolean isOf(Proposal proposal) {
        return pot.equals(proposal.pot())
                && (pot.isPresent()
                        || (variety.id().equals(proposal.variety())
                                && bulbs == proposal.bulbs()
                                && purchase.equals(proposal.purchase())));
    }
}
