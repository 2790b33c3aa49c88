// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.util.List;
import java.util.Optional;
import sillbook.model.SeasonPlan;
import sillbook.model.Wish;
import sillbook.reckon.dates.DaySpan;

/**
 * A plan, worked out: what flowers when, what stands where, what it cannot do.
 *
 * @param pots in the order of the plan
 * @param rooms of every place that a pot stands at, or could: the cold ones first
 * @param wishes the earliest first
 * @param troubles what is wrong with single pots and places, and each gap; the earliest first
 */
public record PlanNow(
        SeasonPlan plan,
        List<PlannedPot> pots,
        Ribbon ribbon,
        List<RoomTaken> rooms,
        List<WishMet> wishes,
        List<Trouble> troubles) {
    public PlanNow {
        pots = List.copyOf(pots);
        rooms = List.copyOf(rooms);
        wishes = List.copyOf(wishes);
        troubles = List.copyOf(troubles);
    }

    /** What is wrong with a pot. */
    public List<Trouble> troublesOf(int pot) {
        return troubles.stream().filter(one -> one.pots().contains(pot)).toList();
    }

    /** What is in bloom of the pots that a wish asks for, its days being those wished for. */
    public Ribbon of(Wish wish) {
        List<PlannedPot> suited = pots.stream().filter(pot -> pot.suits(wish)).toList();
        List<DaySpan> wished = List.of(DaySpan.ofInclusive(wish.from(), wish.to()));
        return suited.size() == pots.size()
                ? new Ribbon(ribbon.days(), ribbon.pots(), ribbon.chances(), wished)
                : Ribbon.of(suited, ribbon.days(), wished);
    }

    /** The first gap, if there is one. */
    public Optional<Trouble> firstGap() {
        return troubles.stream().filter(one -> one.sort() == Trouble.Sort.GAP).findFirst();
    }

    /** How many pots of it are still to be made. */
    public int toMake() {
        return (int) plan.pots().stream().filter(pot -> pot.pot().isEmpty()).count();
    }
}
