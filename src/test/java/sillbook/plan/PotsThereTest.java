// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.plan.August.day;

import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.change.AdoptPlan;
import sillbook.change.Hand;
import sillbook.change.Step;
import sillbook.handbook.Handbook;
import sillbook.model.Arrival;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Pot;
import sillbook.model.Proposal;
import sillbook.model.Purchase;
import sillbook.model.SeasonPlan;
import sillbook.model.Stage;
import sillbook.model.Subject;
import sillbook.model.Variety;
import sillbook.season.Outlook;

/** A plan made anew in mid-season keeps what has happened. */
class PotsThereTest {
    private static final long SOME = 500_000;
    private static final LocalDate WINTER = day(1, 20);

    private final August august = August.usual().wishEveryDay(day(1, 20), day(3, 10));
    private Journal journal = adopted();
    private int order;

    private Journal adopted() {
        Planning planning = august.planning();
        SeasonPlan plan = august.plan(planning.usualRule(), HandRule.pots(planning, planning.usualRule()));
        Journal before = august.put(plan).journal();
        Map<Id<Variety>, String> letters = new HashMap<>();
        before.varieties().all().forEach(one -> letters.put(one.id(), one.name().substring(0, 1)));
        Step step = (Step) new AdoptPlan(plan.id(), letters, Map.of())
                .on(before, new Hand(Instant.parse("2027-08-20T09:00:00Z"), August.TODAY, august::idNumber));
        return before.with(step.edits());
    }

    private Planning planning(LocalDate day) {
        return Planning.of(journal, Outlook.of(journal, Handbook.standard(), day), August.SEASON);
    }

    private Pot pot(String label) {
        return journal.pot(August.SEASON, label).orElseThrow();
    }

    private void happened(String label, LocalDate on, Happening what) {
        journal = journal.with(List.of(new Edit.Put(new Event(
                august.id(),
                new Subject.OfPot(pot(label).id()),
                Day.on(on),
                order++,
                Instant.parse("2028-01-20T09:00:00Z"),
                Optional.empty(),
                what))));
    }

    private void potted(String label, LocalDate on) {
        happened(label, on, new Happening.Potted());
        happened(label, on, new Happening.Moved(August.placeId(planning(on), "cellar"), Stage.COLD));
    }

    private Candidate candidate(String label, LocalDate day) {
        return planning(day).candidates().stream()
                .filter(one -> one.pot().equals(Optional.of(pot(label).id())))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void potsThatWaitAreThereAndTheirBulbsAreTheirs() {
        long there = planning(August.TODAY).candidates().stream()
                .filter(one -> one.pot().isPresent())
                .count();
        assertThat(there).isEqualTo(journal.potsOf(August.SEASON).size());
        assertThat(planning(August.TODAY).candidates()).as("as many as before").hasSize(20);
    }

    @Test
    void aPotInTheColdStaysThereUntilItMayComeIn() {
        potted("N1", day(10, 1));
        Candidate bulbs = candidate("N1", WINTER);
        assertThat(bulbs.cold()).isPresent();
        assertThat(bulbs.cold().orElseThrow().potted()).isEqualTo(day(10, 1));
        assertThat(bulbs.isOpen()).isTrue();

        PlanNow now = again(WINTER);
        PlannedPot planned = now.pots().stream()
                .filter(one -> one.proposal().pot().equals(bulbs.pot()))
                .findFirst()
                .orElseThrow();
        assertThat(planned.course().potting()).isEqualTo(day(10, 1));
        assertThat(planned.course().in()).isAfterOrEqualTo(WINTER);
    }

    @Test
    void aPotWhoseWinterIsOverFloweredWhenItDid() {
        potted("N1", day(10, 1));
        happened(
                "N1",
                day(12, 20),
                new Happening.Moved(August.placeId(planning(WINTER), "kitchen sill"), Stage.WARM_ROOM));
        happened("N1", day(1, 5), new Happening.Flowered(BloomPoint.FIRST_FLOWER, Optional.empty()));
        happened("N1", day(1, 12), new Happening.Flowered(BloomPoint.PAST_BLOOM, Optional.empty()));
        happened("N1", day(1, 13), new Happening.Closed(Happening.End.GIVEN, ""));

        PlanNow now = PlanReading.of(planning(WINTER), adoptedPlan());
        int number = now.plan().pots().stream()
                .map(Proposal::pot)
                .toList()
                .indexOf(Optional.of(pot("N1").id()));
        assertThat(now.pots().get(number).inFlower().start()).isEqualTo(day(1, 5));
        assertThat(now.pots().get(number).inFlower().endExclusive()).isEqualTo(day(1, 12));
        assertThat(now.troublesOf(number)).isEmpty();
        assertThat(planning(WINTER).candidates())
                .noneMatch(one -> one.pot().equals(Optional.of(pot("N1").id())));

        PlanNow empty =
                PlanReading.of(planning(WINTER), august.plan(planning(WINTER).usualRule(), List.of()));
        assertThat(empty.ribbon().pots(day(1, 8)))
                .as("also in a plan that does not name it")
                .isEqualTo(1);
    }

    private SeasonPlan adoptedPlan() {
        return journal.seasonPlans().all().stream()
                .filter(plan -> plan.adopted().isPresent())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theSearchGoesOnAfterWhatHasFlowered() {
        for (String label : List.of("N1", "L1")) {
            potted(label, day(10, 1));
        }
        happened(
                "N1",
                day(12, 20),
                new Happening.Moved(August.placeId(planning(WINTER), "kitchen sill"), Stage.WARM_ROOM));
        happened("N1", day(1, 5), new Happening.Flowered(BloomPoint.FIRST_FLOWER, Optional.empty()));
        happened("N1", day(1, 12), new Happening.Closed(Happening.End.GIVEN, ""));
        happened("L1", day(12, 30), new Happening.Closed(Happening.End.BROKEN, ""));
        potted("N2", day(10, 1));

        assertThat(planning(WINTER).ended()).hasSize(2);
        PlanNow now = again(WINTER);
        assertThat(now.plan().pots())
                .noneMatch(one -> one.pot().equals(Optional.of(pot("N1").id())));
        assertThat(now.plan().pots())
                .anyMatch(one -> one.pot().equals(Optional.of(pot("N2").id())));
    }

    @Test
    void daysThatArePastAreNoGaps() {
        LocalDate later = day(2, 10);
        PlanNow now =
                PlanReading.of(planning(later), august.plan(planning(later).usualRule(), List.of()));

        assertThat(now.ribbon().gaps().get(0).start()).isEqualTo(later);
        assertThat(now.wishes().get(0).gaps().get(0).start()).isEqualTo(later);
        PlanNow over =
                PlanReading.of(planning(day(4, 1)), august.plan(planning(later).usualRule(), List.of()));
        assertThat(over.ribbon().gaps()).isEmpty();
        assertThat(over.wishes().get(0).isMet()).isTrue();
    }

    @Test
    void anotherPlanIsReadAsIfThePotsThatWaitMadeWayForIt() {
        SeasonPlan other = august.plan(
                adoptedPlan().rule(),
                adoptedPlan().pots().stream()
                        .map(one -> one.about(Optional.empty()))
                        .toList());

        PlanNow now = PlanReading.of(planning(August.TODAY), other);
        assertThat(now.troubles()).extracting(Trouble::sort).doesNotContain(Trouble.Sort.BULBS_SHORT);
    }

    @Test
    void aPotInTheColdIsNotBroughtInBeforeItsWeeksAreHadNorAfterItMayWait() {
        potted("N1", day(10, 1));
        LocalDate autumn = day(11, 1);
        int number = adoptedPlan().pots().stream()
                .map(Proposal::pot)
                .toList()
                .indexOf(Optional.of(pot("N1").id()));
        Planning planning = planning(autumn);

        PlanNow soon = PlanReading.of(planning, Nudge.by(planning, adoptedPlan(), number, -60));
        Trouble tooSoon = soon.troublesOf(number).get(0);
        assertThat(tooSoon.sort()).isEqualTo(Trouble.Sort.COLD_TOO_SHORT);
        assertThat(tooSoon.cures())
                .containsExactly(new Trouble.BringIn(number, day(10, 1).plusWeeks(12)));

        PlanNow late = PlanReading.of(planning, Nudge.by(planning, adoptedPlan(), number, 120));
        assertThat(late.troublesOf(number)).extracting(Trouble::sort).contains(Trouble.Sort.COLD_TOO_LONG);
    }

    @Test
    void whenAPotMayComeInIsNotForTheOldPlanToSay() {
        potted("N1", day(9, 20));
        Candidate bulbs = candidate("N1", day(11, 1));

        assertThat(bulbs.cold().orElseThrow().in().start())
                .as("twelve weeks, though it is planned for later")
                .isEqualTo(day(9, 20).plusWeeks(12));
    }

    @Test
    void aPotThatWaitsIsPlannedWithTheVarietyThatCame() {
        Purchase marbles = august.purchase("Night Marbles");
        Variety sent = Variety.of(august.id(), "Bluejar", Kind.of("squill"));
        journal = journal.with(List.of(
                new Edit.Put(sent),
                new Edit.Put(Purchase.of(
                        marbles.id(), sent.id(), marbles.season(), marbles.day(), 24, Purchase.State.IN_HAND))));

        assertThat(candidate("N1", August.TODAY).variety()).isEqualTo(sent);
        potted("N1", day(10, 1));
        assertThat(candidate("N1", WINTER).variety().name())
                .as("what is in it is in it")
                .isEqualTo("Night Marbles");
    }

    @Test
    void aSearchThatWantsFewerPotsLeavesThoseOutThatWait() {
        August one = August.usual().wishOn(day(2, 14), 1, false);
        Planning planning = one.planning();
        Seeking.Found found = August.found(planning, planning.usualRule(), SOME);
        assertThat(found.pots()).hasSize(1);

        PlanNow now = again(August.TODAY);
        assertThat(now.pots()).hasSizeLessThan(journal.potsOf(August.SEASON).size());
    }

    @Test
    void byHandAPotInTheColdComesInOnItsDayThoughTheRuleHasNone() {
        potted("N1", day(10, 1));
        Planning planning = planning(WINTER);
        SeasonPlan.Rule none = new SeasonPlan.Rule(1, 12, day(6, 1), day(6, 1), 4, java.util.Set.of());

        assertThat(HandRule.pots(planning, none))
                .extracting(Proposal::pot)
                .containsExactly(Optional.of(pot("N1").id()));
    }

    @Test
    void aPotInFlowerIsNoLongerMoved() {
        potted("N1", day(10, 1));
        happened(
                "N1",
                day(1, 2),
                new Happening.Moved(August.placeId(planning(WINTER), "kitchen sill"), Stage.WARM_ROOM));
        happened("N1", day(1, 18), new Happening.Flowered(BloomPoint.FIRST_FLOWER, Optional.empty()));

        Candidate bulbs = candidate("N1", WINTER);
        assertThat(bulbs.isOpen()).isFalse();
        assertThat(bulbs.settled().orElseThrow().flowers().start()).isEqualTo(day(1, 18));

        PlanNow now = again(WINTER);
        assertThat(now.ribbon().chance(WINTER)).isEqualTo(1);
        int number =
                now.pots().stream().map(one -> one.proposal().pot()).toList().indexOf(bulbs.pot());
        Proposal.Course course = now.pots().get(number).course();
        assertThat(Nudge.by(planning(WINTER), now.plan(), number, 7)
                        .pots()
                        .get(number)
                        .course())
                .isEqualTo(course);
        assertThat(Nudge.without(now.plan(), number).pots()).hasSize(now.pots().size());
    }

    @Test
    void whatWaitsForBulbsThatDidNotComeIsPlannedNoMore() {
        Purchase marbles = august.purchase("Night Marbles");
        int pots = (int) journal.potsOf(August.SEASON).stream()
                .filter(pot -> pot.holds(marbles.variety()))
                .count();
        journal = journal.with(List.of(new Edit.Put(new Purchase(
                marbles.id(),
                marbles.variety(),
                marbles.season(),
                marbles.day(),
                6,
                marbles.grade(),
                marbles.price(),
                "",
                "",
                Arrival.NOT_SAID,
                Optional.empty(),
                marbles.cooled(),
                Purchase.State.IN_HAND,
                ""))));

        assertThat(pots).isGreaterThan(1);
        assertThat(planning(August.TODAY).candidates())
                .filteredOn(one -> one.variety().id().equals(marbles.variety()))
                .hasSize(1);
        PlanNow adopted = PlanReading.of(
                planning(August.TODAY), journal.seasonPlans().all().iterator().next());
        assertThat(adopted.troubles()).extracting(Trouble::sort).contains(Trouble.Sort.BULBS_SHORT);
    }

    private PlanNow again(LocalDate day) {
        Planning planning = planning(day);
        Seeking.Found found = August.found(planning, planning.usualRule(), SOME);
        assertThat(found.pots()).filteredOn(one -> one.pot().isPresent()).isNotEmpty();
        return PlanReading.of(planning, august.plan(planning.usualRule(), found.pots()));
    }
}
