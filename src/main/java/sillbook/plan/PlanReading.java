// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import sillbook.model.Proposal;
import sillbook.model.SeasonPlan;

/** Works a plan out. */
public final class PlanReading {
    private final Planning planning;
    private final SeasonPlan plan;
    private final Matching open;
    private final Matching ended;

    private PlanReading(Planning planning, SeasonPlan plan) {
        this.planning = planning;
        this.plan = plan;
        this.open = new Matching(planning.candidates());
        this.ended = new Matching(planning.ended());
    }

    public static PlanNow of(Planning planning, SeasonPlan plan) {
        return new PlanReading(planning, plan).read();
    }

    private PlanNow read() {
        List<PlannedPot> pots = plan.pots().stream()
                .map(pot -> PlannedPot.of(pot, candidate(pot)))
                .toList();
        List<PlannedPot> flowering = Stream.concat(
                        pots.stream(), ended.left().stream().map(PlannedPot::of))
                .toList();
        WishedDays wished = WishedDays.of(planning, plan.rule());
        Ribbon ribbon = Ribbon.of(flowering, planning.days(), wished.everyDay());
        Loads loads = new Loads();
        pots.forEach(pot -> loads.stand(pot.course(), pot.gone()));
        List<Berth> berths = berths(pots);
        List<RoomTaken> rooms = berths.stream()
                .map(berth -> RoomTaken.of(berth, loads, planning.days()))
                .toList();
        WishMetReading wishReading =
                new WishMetReading(planning, wished, pots, new BloomChances(pots, planning.days()));
        List<WishMet> wishes = planning.wishes().stream().map(wishReading::of).toList();
        List<Trouble> troubles = new ArrayList<>(new PotTroubles(planning, plan, pots, loads, berths).list());
        troubles.addAll(new Lacks(planning, plan.rule(), open.left(), loads, pots).list(ribbon, wishes));
        return new PlanNow(plan, pots, ribbon, rooms, wishes, troubles);
    }

    /** One of those there are, each for one pot; else one like it, where the journal has changed since. */
    private Candidate candidate(Proposal pot) {
        return open.take(pot).or(() -> ended.take(pot)).orElseGet(() -> alike(pot));
    }

    /** Every place that a plan can know or names. */
    private List<Berth> berths(List<PlannedPot> pots) {
        List<Berth> known = Stream.concat(planning.colds().stream(), planning.rooms().stream())
                .toList();
        Stream<Berth> named = pots.stream()
                .flatMap(pot -> Stream.concat(pot.course().cold().stream(), pot.course().room().stream()))
                .distinct()
                .filter(place -> known.stream().noneMatch(berth -> berth.id().equals(place)))
                .flatMap(place -> planning.journal().places().find(place).stream())
                .map(place -> Berth.of(place, CandidateReading.USUAL_RIM, planning.journal()));
        return Stream.concat(known.stream(), named).toList();
    }

    private Candidate alike(Proposal pot) {
        return planning.making()
                .pot(planning.journal().varieties().get(pot.variety()), pot.bulbs(), pot.purchase(), pot.container());
    }
}
