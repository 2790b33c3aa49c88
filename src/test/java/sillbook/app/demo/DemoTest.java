// SPDX-License-Identifier: Apache-2.0
package sillbook.app.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import sillbook.handbook.Handbook;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Season;
import sillbook.model.SeasonPlan;
import sillbook.plan.PlanNow;
import sillbook.plan.PlanReading;
import sillbook.plan.Planning;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.Concern;
import sillbook.season.Job;
import sillbook.season.Outlook;
import sillbook.season.PlaceClimate;
import sillbook.season.PotNow;
import sillbook.season.Today;
import sillbook.season.Verdict;

/** That the demo's lines all hold, always come to the same journal, and show on its day what they were written to show. */
class DemoTest {
    private static final Journal JOURNAL = Demo.journal();
    private static final Season FOURTH = new Season(2026);
    private static final LocalDate DAY = LocalDate.ofInstant(Demo.MOMENT, Demo.ZONE);

    private final Outlook outlook = Outlook.of(JOURNAL, Handbook.standard(), DAY);
    private final Today today = outlook.today();

    @Test
    void itIsTheSameJournalEachTimeToTheLastId() {
        assertThat(Demo.journal()).isEqualTo(JOURNAL);
    }

    @Test
    void threeWintersAreFinishedAndAFourthIsInFullSwing() {
        assertThat(List.of(2023, 2024, 2025))
                .extracting(year -> JOURNAL.potsOf(new Season(year)).size())
                .containsExactly(16, 24, 39);
        assertThat(outlook.lines(FOURTH)).hasSize(28);
        assertThat(JOURNAL.pots().all())
                .filteredOn(pot -> pot.season().compareTo(FOURTH) < 0)
                .filteredOn(pot -> !isClosed(pot.id()))
                .as("an amaryllis lives on in its pot")
                .extracting(Pot::label)
                .containsExactly("A3");
    }

    private static boolean isClosed(Id<Pot> pot) {
        return JOURNAL.history(pot).stream().anyMatch(event -> event.what() instanceof Happening.Closed);
    }

    @Test
    void everyKindOfTheHandbookGrowsInIt() {
        Set<String> grown = JOURNAL.varieties().all().stream()
                .map(variety -> variety.kind().name())
                .collect(Collectors.toSet());

        assertThat(Handbook.standard().kinds())
                .allMatch(entry -> grown.contains(entry.kind().name()));
    }

    @Test
    void everythingWrittenLiesBeforeTheMomentItIsSeenAt() {
        assertThat(JOURNAL.events().all()).allMatch(event -> event.writtenAt().isBefore(Demo.MOMENT));
    }

    @Test
    void anAmaryllisIsInItsThirdYear() {
        Pot third = JOURNAL.pot(FOURTH, "A1").orElseThrow();
        Pot second = JOURNAL.pots().get(third.parent().orElseThrow());
        Pot first = JOURNAL.pots().get(second.parent().orElseThrow());

        assertThat(first.season()).isEqualTo(new Season(2024));
        assertThat(first.parent()).isEmpty();
    }

    @Test
    void onePotIsFrostBittenAndOneWasBlasted() {
        assertThat(troubles("T8", FOURTH)).contains("FROST");
        assertThat(troubles("T7", new Season(2025))).contains("BLASTED");
    }

    private static List<String> troubles(String label, Season season) {
        return JOURNAL.history(JOURNAL.pot(season, label).orElseThrow().id()).stream()
                .map(event -> event.what())
                .filter(Happening.Checked.class::isInstance)
                .map(Happening.Checked.class::cast)
                .flatMap(checked -> checked.findings().troubles().stream())
                .map(Enum::name)
                .toList();
    }

    @Test
    void itsDayHasEverySectionOfToday() {
        assertThat(labels(today.late())).containsExactly("T4");
        assertThat(today.late().get(0).daysLate(DAY)).isEqualTo(1);
        assertThat(today.ready().get(0).batch().orElseThrow().counts().values()).containsExactly(15, 3);
        assertThat(labels(today.due())).containsExactly("D1", "P1", "A1");
        assertThat(today.checks())
                .extracting(round -> JOURNAL.places().get(round.place()).name() + ", "
                        + round.pots().size())
                .containsExactly("cellar, 20", "garage fridge, 6");
        assertThat(today.dailyCare().orElseThrow().pots()).hasSize(8);
        assertThat(today.dailyCare().orElseThrow().ofPots()).isEqualTo(10);
        assertThat(labels(today.soon())).startsWith("M1", "S1", "H5").contains("H2", "T1", "A2", "C2", "T3");
        assertThat(today.inBloom()).hasSize(2);
        assertThat(today.done()).isNotEmpty();
    }

    @Test
    void theNextSeasonIsPlannedTwiceAndBothPlansLeaveAGapThatIsExplained() {
        Season fifth = FOURTH.next();
        List<SeasonPlan> plans = SeasonPlan.of(fifth, JOURNAL);
        assertThat(plans).extracting(SeasonPlan::name).containsExactly("A", "B");
        assertThat(plans).extracting(SeasonPlan::adopted).containsOnly(Optional.empty());

        Planning planning = Planning.of(JOURNAL, outlook, fifth);
        assertThat(plans).allSatisfy(plan -> {
            PlanNow now = PlanReading.of(planning, plan);
            assertThat(now.pots()).hasSize(4);
            assertThat(now.ribbon().gapDays()).isPositive();
            assertThat(now.firstGap().orElseThrow().cures()).isNotEmpty();
        });
        assertThat(plans.stream()
                        .map(plan -> PlanReading.of(planning, plan).ribbon().gapDays()))
                .as("one at a time leaves fewer days without")
                .isSortedAccordingTo(Comparator.reverseOrder());
    }

    @Test
    void aPotIsHeldBackBecauseItsPlaceRanWarm() {
        PotNow held = now("D2");

        assertThat(held.concerns()).hasAtLeastOneElementOfType(Concern.HeldBack.class);
        assertThat(held.life().cold().daysColdEnough())
                .isLessThan(held.life().cold().daysIn());
        assertThat(held.readiness().orElseThrow().verdict()).isEqualTo(Verdict.WEEKS_SHORT);
    }

    @Test
    void aPotStoodInTheFrostThatItsThermometerSaw() {
        assertThat(now("M1").concerns()).hasAtLeastOneElementOfType(Concern.Frozen.class);
        assertThat(now("H5").concerns()).doesNotHaveAnyElementsOfTypes(Concern.Frozen.class);
    }

    private PotNow now(String label) {
        return outlook.pot(JOURNAL.pot(FOURTH, label).orElseThrow().id());
    }

    @Test
    void aThermometerWasFlatForTwelveDays() {
        assertThat(climate("cellar").season().orElseThrow().gaps())
                .containsExactly(DaySpan.ofInclusive(LocalDate.of(2026, 11, 25), LocalDate.of(2026, 12, 5)));
    }

    @Test
    void aPlaceIsKnownByItsWeeklyLowestAndHighestAlone() {
        Place fridge = place("garage fridge");

        assertThat(JOURNAL.daysRead().at(fridge.id())).isEmpty();
        assertThat(JOURNAL.spanReadings().all())
                .filteredOn(span -> span.place().equals(fridge.id()))
                .hasSize(16);
        assertThat(climate("garage fridge").week()).isPresent();
    }

    private PlaceClimate climate(String name) {
        return PlaceClimate.of(JOURNAL, place(name).id(), DAY);
    }

    private static Place place(String name) {
        return JOURNAL.places().all().stream()
                .filter(place -> place.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> labels(List<Job.OfPots> jobs) {
        return jobs.stream()
                .map(job -> JOURNAL.pots().get(job.pots().get(0)).label())
                .toList();
    }

    @Test
    void everyPlaceOfTheWinterHoldsAsManyPotsAsItHasRoomFor() {
        Map<String, Integer> standing = outlook.places().stream()
                .collect(Collectors.toMap(
                        now -> now.place().name(), now -> now.pots().size()));

        assertThat(standing)
                .isEqualTo(Map.of(
                        "garage fridge",
                        6,
                        "cellar",
                        20,
                        "trench",
                        6,
                        "porch",
                        4,
                        "stair window",
                        2,
                        "kitchen sill",
                        3,
                        "parlour sill",
                        2));
    }
}
