// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Proposal;
import sillbook.model.SeasonPlan;
import sillbook.reckon.dates.DaySpan;

/** Works a plan out. */
public final class PlanReading {
    private final Planning planning;
    private final SeasonPlan plan;
    private final List<Candidate> left;
    private final List<Candidate> ended;

    private PlanReading(Planning planning, SeasonPlan plan) {
        this.planning = planning;
        this.plan = plan;
        this.left = new ArrayList<>(planning.candidates());
        this.ended = new ArrayList<>(planning.ended());
    }

    public static PlanNow of(Planning planning, SeasonPlan plan) {
        return new PlanReading(planning, plan).read();
    }

    private PlanNow read() {
        List<PlannedPot> pots = plan.pots().stream()
                .map(pot -> PlannedPot.of(pot, candidate(pot)))
                .toList();
        List<PlannedPot> flowering =
                Stream.concat(pots.stream(), ended.stream().map(PlannedPot::of)).toList();
        Ribbon ribbon = Ribbon.of(
                flowering, planning.days(), WishedDays.of(planning, plan.rule()).everyDay());
        Loads loads = loads(pots);
        List<Berth> berths = berths(pots);
        List<RoomTaken> rooms = berths.stream()
                .map(berth -> RoomTaken.of(berth, loads, planning.days()))
                .toList();
        WishMetReading wishReading = new WishMetReading(
                planning, WishedDays.of(planning, plan.rule()), pots, new BloomChances(pots, planning.days()));
        List<WishMet> wishes = planning.wishes().stream().map(wishReading::of).toList();
        List<Trouble> troubles = new ArrayList<>(new PotTroubles(planning, plan, pots, loads, berths).list());
        troubles.addAll(new Lacks(planning, plan.rule(), left, loads, pots).list(ribbon, wishes));
        return new PlanNow(plan, pots, ribbon, rooms, wishes, troubles);
    }

    /** One of those there are, each for one pot; else one like it, where the journal has changed since. */
    private Candidate candidate(Proposal pot) {
        Optional<Candidate> found = Stream.of(left, ended)
                .flatMap(List::stream)
                .filter(candidate -> candidate.isOf(pot))
                .findFirst();
        found.ifPresent(left::remove);
        found.ifPresent(ended::remove);
        return found.orElseGet(() -> alike(pot));
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

    private static Loads loads(List<PlannedPot> pots) {
        Loads loads = new Loads();
        for (PlannedPot pot : pots) {
            pot.course()
                    .cold()
                    .filter(place ->
                            pot.course().potting().isBefore(pot.course().in()))
                    .ifPresent(place -> loads.stand(
                            place,
                            DaySpan.of(pot.course().potting(), pot.course().in())));
            pot.course()
                    .room()
                    .ifPresent(
                            place -> loads.stand(place, DaySpan.of(pot.course().in(), pot.gone())));
        }
        return loads;
    }
}
