// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Pot.Planting;
import sillbook.model.Proposal;
import sillbook.model.SeasonPlan;
import sillbook.model.Variety;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.Forcing;

/** Works a plan out. */
public final class PlanReading {
    private final Planning planning;
    private final SeasonPlan plan;
    private final List<Candidate> left;

    private PlanReading(Planning planning, SeasonPlan plan) {
        this.planning = planning;
        this.plan = plan;
        this.left = new ArrayList<>(planning.candidates());
    }

    public static PlanNow of(Planning planning, SeasonPlan plan) {
        return new PlanReading(planning, plan).read();
    }

    private PlanNow read() {
        List<PlannedPot> pots = plan.pots().stream()
                .map(pot -> PlannedPot.of(pot, candidate(pot)))
                .toList();
        Ribbon ribbon = Ribbon.of(pots, planning.days(), WishedDays.everyDay(planning.wishes(), plan.rule()));
        Loads loads = loads(pots);
        List<RoomTaken> rooms = Stream.concat(planning.colds().stream(), planning.rooms().stream())
                .map(berth -> RoomTaken.of(berth, loads, planning.days()))
                .toList();
        List<WishMet> wishes = planning.wishes().stream()
                .map(wish -> new WishMetReading(planning, pots, ribbon).of(wish))
                .toList();
        List<Trouble> troubles = new ArrayList<>(new PotTroubles(planning, plan, pots, loads).list());
        troubles.addAll(new Lacks(planning, plan.rule(), left, loads, pots).list(ribbon, wishes));
        return new PlanNow(plan, pots, ribbon, rooms, wishes, troubles);
    }

    /** One of those there are, each for one pot; else one like it, where the journal has changed since. */
    private Candidate candidate(Proposal pot) {
        Optional<Candidate> found =
                left.stream().filter(candidate -> candidate.isOf(pot)).findFirst();
        found.ifPresent(left::remove);
        return found.orElseGet(() -> alike(pot));
    }

    private Candidate alike(Proposal pot) {
        Variety variety = planning.journal().varieties().get(pot.variety());
        Forcing forcing =
                planning.outlook().forcing(new Planting(variety.id(), pot.bulbs(), pot.purchase()), planning.season());
        return Candidate.made(
                variety,
                pot.bulbs(),
                pot.purchase(),
                pot.container(),
                forcing,
                planning.today(),
                new ColdFit(forcing, planning.today(), planning.colds(), planning.days()));
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
