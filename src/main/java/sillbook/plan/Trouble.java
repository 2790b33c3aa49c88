// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Variety;
import sillbook.reckon.dates.DaySpan;

/**
 * Something that a plan cannot do as it stands, and what would cure it.
 *
 * @param pots whose it is, by their number in the plan from 0
 * @param place where, if it is of a place
 * @param days when, if it has days
 * @param had what there is of days of cold, pots or bulbs
 * @param needed what there should be
 * @param cures what would help, the least change first
 */
public record Trouble(
        Sort sort,
        Set<Integer> pots,
        Optional<Id<Place>> place,
        Optional<DaySpan> days,
        int had,
        int needed,
        List<Cure> cures) {
    public Trouble {
        pots = Set.copyOf(pots);
        cures = List.copyOf(cures);
    }

    /** What is wrong. */
    public enum Sort {
        /** More pots stand at a place than find room; had is its room, needed the most that stand there. */
        NO_ROOM,
        /** Brought in before its fewest days of cold; days of cold. */
        COLD_TOO_SHORT,
        /** Longer in the cold than does it good; days of cold. */
        COLD_TOO_LONG,
        /** No place is named, or known, where it has its cold. */
        NO_COLD_PLACE,
        /** The place gets colder than a pot bears; tenths of a degree Celsius. */
        WOULD_FREEZE,
        /** More are to be potted on a day than the rule allows, or on no day of the grower's; pots. */
        POTTING_DAY,
        /** A purchase has fewer bulbs than the plan takes of it; bulbs. */
        BULBS_SHORT,
        /** It should have been potted, or its bulbs cannot be here by then. */
        POTTED_TOO_LATE,
        /** A place is not there on some of the days. */
        NOT_THERE,
        /** Days wished for without bloom; days. */
        GAP,
        /** A dated wish that lacks pots; pots. */
        WISH
    }

    /** What would help. */
    public sealed interface Cure {}

    /** A pot stands somewhere else. */
    public record StandAt(int pot, Id<Place> place) implements Cure {}

    /** A pot comes in on another day. */
    public record BringIn(int pot, LocalDate day) implements Cure {}

    /** A pot is potted by a day. */
    public record PotBy(int pot, LocalDate day) implements Cure {}

    /** Bulbs that are in no pot of the plan yet make one more. */
    public record OneMore(Id<Variety> variety, int bulbs, LocalDate in) implements Cure {}

    /** One more would be wanted of what is in the plan, potted by a day to come in on another. */
    public record Buy(Id<Variety> variety, int bulbs, LocalDate potted, LocalDate in) implements Cure {}

    /** Room for one more at a place. */
    public record MoreRoom(Id<Place> place, int pots) implements Cure {}

    /** Nothing in the journal suits: another sort of bulb is to be chosen. */
    public record Choose() implements Cure {}
}
