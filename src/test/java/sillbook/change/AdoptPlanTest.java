// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sillbook.model.Day;
import sillbook.model.Id;
import sillbook.model.Intention;
import sillbook.model.Kind;
import sillbook.model.Pot;
import sillbook.model.Proposal;
import sillbook.model.Proposal.Course;
import sillbook.model.Purchase;
import sillbook.model.Season;
import sillbook.model.SeasonPlan;
import sillbook.model.SeasonPlan.Rule;
import sillbook.model.Variety;
import sillbook.model.Wish;
import sillbook.model.WishedFor;

class AdoptPlanTest {
    private static final Season NEXT = Bench.WINTER.next();
    private static final LocalDate OCTOBER = LocalDate.of(2027, 10, 4);
    private static final Purchase BULBS =
            Purchase.of(new Id<>(3, 1), Bench.MARROW_LANE.id(), NEXT, Bench.day(1, 2), 20, Purchase.State.ORDERED);
    private static final Wish WISH = new Wish(
            new Id<>(4, 1),
            NEXT,
            LocalDate.of(2028, 2, 14),
            LocalDate.of(2028, 2, 14),
            "",
            WishedFor.one(Optional.empty()),
            Set.of(),
            "");

    private final Bench bench = new Bench();

    @BeforeEach
    void write() {
        bench.done(new WriteDown(BULBS));
        bench.done(new WriteDown(WISH));
    }

    private static Course course(int week) {
        return new Course(
                OCTOBER.plusWeeks(week),
                Optional.of(Bench.CELLAR.id()),
                OCTOBER.plusWeeks(week + 14),
                Optional.of(Bench.SILL.id()));
    }

    private static Proposal proposal(int week, Optional<Id<Pot>> pot) {
        return new Proposal(Bench.MARROW_LANE.id(), 5, Optional.of(BULBS.id()), Optional.empty(), pot, course(week));
    }

    private SeasonPlan plan(long id, String name, Proposal... pots) {
        SeasonPlan plan = new SeasonPlan(
                new Id<>(5, id),
                NEXT,
                name,
                new Rule(2, 12, OCTOBER.plusWeeks(12), OCTOBER.plusWeeks(20), 3, Set.of(DayOfWeek.SUNDAY)),
                List.of(pots),
                Optional.of(new SeasonPlan.Search(0, 7, 2)),
                Optional.empty(),
                "");
        bench.done(new WriteDown(plan));
        return plan;
    }

    private static AdoptPlan adopt(SeasonPlan plan) {
        return new AdoptPlan(plan.id(), Map.of(Bench.MARROW_LANE.id(), "T"), Map.of(WISH.id(), Set.of(0)));
    }

    private SeasonPlan kept(SeasonPlan plan) {
        return bench.journal.seasonPlans().get(plan.id());
    }

    private List<String> labels() {
        return bench.journal.potsOf(NEXT).stream().map(Pot::label).toList();
    }

    @Test
    void itsPotsWaitWithTheirBulbsKeptForThem() {
        SeasonPlan plan = plan(1, "A", proposal(0, Optional.empty()), proposal(1, Optional.empty()));

        assertThat(bench.done(adopt(plan)).name()).isEqualTo("plan A adopted, T1-T2 to be potted");

        assertThat(labels()).containsExactly("T1", "T2");
        Pot first = bench.journal.pot(NEXT, "T1").orElseThrow();
        assertThat(first.first()).isEqualTo(new Pot.Planting(Bench.MARROW_LANE.id(), 5, Optional.of(BULBS.id())));
        assertThat(bench.journal.history(first.id())).isEmpty();
        assertThat(Intention.of(first.id(), bench.journal))
                .map(Intention::course)
                .contains(course(0));
        assertThat(kept(plan).adopted()).contains(Bench.TODAY);
        assertThat(kept(plan).pots()).extracting(Proposal::pot).doesNotContain(Optional.empty());
        assertThat(kept(plan).search()).isPresent();
        assertThat(bench.journal.wishes().get(WISH.id()).pots()).containsExactly(first.id());
    }

    @Test
    void anotherPlanTakesItsPlaceAndWhatHasHappenedStays() {
        SeasonPlan before = plan(1, "A", proposal(0, Optional.empty()), proposal(1, Optional.empty()));
        bench.done(adopt(before));
        Id<Pot> potted = bench.journal.pot(NEXT, "T1").orElseThrow().id();
        bench.done(new Plant(List.of(potted), Optional.empty(), Day.on(Bench.TODAY)));
        Id<Pot> waiting = bench.journal.pot(NEXT, "T2").orElseThrow().id();

        SeasonPlan after = plan(2, "B", proposal(2, Optional.of(potted)), proposal(3, Optional.empty()));
        assertThat(bench.done(adopt(after)).name()).isEqualTo("plan B adopted, T2 to be potted");

        assertThat(bench.journal.pots().contains(waiting)).isFalse();
        assertThat(labels()).containsExactlyInAnyOrder("T1", "T2");
        assertThat(Intention.of(potted, bench.journal)).map(Intention::course).contains(course(2));
        assertThat(bench.journal.history(potted)).hasSize(1);
        assertThat(kept(before).adopted()).isEmpty();
        assertThat(kept(before).pots())
                .as("what made way is proposed again")
                .extracting(Proposal::pot)
                .containsExactly(Optional.of(potted), Optional.empty());
        assertThat(bench.journal.intentions().all()).hasSize(2);
    }

    @Test
    void aPotThatWaitsGetsWhatWasSentInstead() {
        bench.done(adopt(plan(1, "A", proposal(0, Optional.empty()))));
        Id<Pot> waiting = bench.journal.pot(NEXT, "T1").orElseThrow().id();
        Variety other = Variety.of(new Id<>(1, 2), "Soot and Honey", new Kind("tulip", "Triumph"));
        bench.done(new WriteDown(other));
        Proposal sent =
                new Proposal(other.id(), 4, Optional.of(BULBS.id()), Optional.empty(), Optional.of(waiting), course(0));

        bench.done(adopt(plan(2, "B", sent)));

        assertThat(bench.journal.pots().get(waiting).plantings())
                .containsExactly(new Pot.Planting(other.id(), 4, Optional.of(BULBS.id())));
    }

    @Test
    void aPlanOfPotsThatAreThereMakesNone() {
        bench.done(Bench.pots(1, "T", Optional.empty(), Optional.empty()));
        SeasonPlan plan = plan(1, "A", proposal(0, Optional.of(bench.pot("T1"))));

        assertThat(bench.done(adopt(plan)).name()).isEqualTo("plan A adopted");
        assertThat(labels()).isEmpty();
    }

    @Test
    void itIsAdoptedOnceAndNotEmpty() {
        SeasonPlan plan = plan(1, "A", proposal(0, Optional.empty()));
        bench.done(adopt(plan));

        assertThat(bench.refused(adopt(plan))).startsWith("Plan A of 2027-28 is adopted already.");
        assertThat(bench.refused(adopt(plan(2, "B")))).startsWith("Plan B has no pots yet.");
    }

    @Test
    void aPotThatGoesLeavesThePlanAndWhatWasMeantForIt() {
        SeasonPlan plan = plan(1, "A", proposal(0, Optional.empty()), proposal(1, Optional.empty()));
        bench.done(adopt(plan));

        bench.done(new RemovePots(
                List.of(bench.journal.pot(NEXT, "T1").orElseThrow().id())));

        assertThat(kept(plan).pots()).hasSize(1);
        assertThat(bench.journal.intentions().all()).hasSize(1);
        assertThat(bench.journal.wishes().get(WISH.id()).pots()).isEmpty();
    }

    @Test
    void aPlanThatGoesLeavesThePotsWithoutDaysMeantForThem() {
        SeasonPlan plan = plan(1, "A", proposal(0, Optional.empty()));
        bench.done(adopt(plan));

        assertThat(bench.done(new Remove(kept(plan))).name()).isEqualTo("plan A of 2027-28 removed");
        assertThat(bench.journal.intentions().all()).isEmpty();
        assertThat(labels()).containsExactly("T1");
    }

    @Test
    void twoPlansOfASeasonHaveTwoNames() {
        plan(1, "A");

        assertThat(bench.refused(new WriteDown(new SeasonPlan(
                        new Id<>(5, 9),
                        NEXT,
                        "a",
                        new Rule(1, 10, OCTOBER, OCTOBER, 1, Set.of()),
                        List.of(),
                        Optional.empty(),
                        Optional.empty(),
                        ""))))
                .startsWith("There is a plan A of 2027-28 already.");
    }
}
