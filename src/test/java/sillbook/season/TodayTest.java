// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static sillbook.season.Winter.winter;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Happening;
import sillbook.model.Happening.Care;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Place.Sort;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.model.Subject;
import sillbook.reckon.dates.DaySpan;
import sillbook.reckon.dates.Window;
import sillbook.season.Winter.Look;

/** One day in January, as it is read from top to bottom. */
class TodayTest {
    private final Winter winter = winter().place("cellar", Sort.CELLAR)
            .room(20)
            .place("trench", Sort.TRENCH)
            .place("stair window", Sort.COOL_ROOM)
            .room(5)
            .place("kitchen sill", Sort.WARM_SILL)
            .pot("T4", "Marrow Lane", "tulip/Triumph")
            .potted("21 sep", "cellar")
            .saw("10 jan", Look.roots().shoot(6))
            .pots("H5-H22", "Inkwell", "hyacinth")
            .potted("12 oct", "cellar")
            .saw("2 jan", Look.roots().shoot(3))
            .then("H5-H7")
            .moved("9 jan", "stair window")
            .pot("S1", "Thimble Post", "snowdrop")
            .potted("8 oct", "trench")
            .wish("30 jan", "T4");
    private final Today today = winter.on("12 jan").today();

    @Test
    void aPotIsLateForItsWish() {
        assertThat(today.late()).singleElement().satisfies(job -> {
            assertThat(job.kind()).isEqualTo(JobKind.BRING_IN);
            assertThat(job.pots()).isEqualTo(winter.ids("T4"));
            assertThat(job.daysLate(today.day())).isEqualTo(3);
            assertThat(job.route().to().map(Destination::place)).contains(winter.placeId("stair window"));
        });
    }

    @Test
    void aPartedBatchIsOneRowWhereMostOfItStands() {
        assertThat(today.ready()).singleElement().satisfies(job -> {
            assertThat(job.pots()).isEqualTo(winter.ids("H8-H22"));
            assertThat(job.batch().orElseThrow().counts()).isEqualTo(Map.of(Stage.COLD, 15, Stage.COOL_ROOM, 3));
            assertThat(job.deadline().orElseThrow().day()).isEqualTo(winter.day("25 jan"));
        });
    }

    @Test
    void theRestOfItHasARowOfItsOwnAndATrenchIsLiftedOnItsDay() {
        assertThat(today.soon()).extracting(Job.OfPots::pots).containsExactly(winter.ids("H5-H7"), winter.ids("S1"));
        assertThat(today.soon()).extracting(Job.OfPots::on).containsOnly(winter.day("14 jan"));
    }

    @Test
    void aRoundIsAskedForByItsPlaceAndATrenchNever() {
        assertThat(today.checks()).singleElement().satisfies(round -> {
            assertThat(round.place()).isEqualTo(winter.placeId("cellar"));
            assertThat(round.pots()).hasSize(16);
            assertThat(round.last()).isEqualTo(winter.day("2 jan"));
        });
        assertThat(today.dailyCare().orElseThrow().pots()).isEqualTo(winter.ids("H5-H7"));
    }

    // The sections

    private static Winter house() {
        return winter().place("cellar", Sort.CELLAR)
                .place("stair window", Sort.COOL_ROOM)
                .place("kitchen sill", Sort.WARM_SILL);
    }

    private static List<List<Id<Pot>>> pots(List<Job.OfPots> jobs) {
        return jobs.stream().map(Job.OfPots::pots).toList();
    }

    @Test
    void theMostLateComesFirst() {
        Winter late = house().pot("T1", "Tuesday Coat", "tulip")
                .potted("1 oct", "cellar")
                .pot("T2", "Tuesday Coat", "tulip")
                .potted("25 sep", "cellar")
                .pot("T3", "Tuesday Coat", "tulip")
                .potted("1 oct", "cellar");
        assertThat(pots(late.on("10 feb").today().late()))
                .containsExactly(late.ids("T2"), late.ids("T1"), late.ids("T3"));
    }

    @Test
    void ofWhatIsReadyTheNearestDeadlineComesFirst() {
        Winter ready = house().pot("T1", "Tuesday Coat", "tulip")
                .potted("1 oct", "cellar")
                .saw("2 jan", Look.roots())
                .pot("T2", "Tuesday Coat", "tulip")
                .potted("28 sep", "cellar")
                .saw("2 jan", Look.roots())
                .pot("T3", "Tuesday Coat", "tulip")
                .potted("27 sep", "cellar")
                .saw("2 jan", Look.roots())
                .wish("8 feb", "T1");
        assertThat(pots(ready.on("16 jan").today().ready()))
                .containsExactly(ready.ids("T1"), ready.ids("T3"), ready.ids("T2"));
    }

    @Test
    void whatIsDueIsInTheOrderOfAPotsLifeAndThenByLabel() {
        Winter due = house().pot("T10", "Tuesday Coat", "tulip")
                .potted("1 oct", "cellar")
                .moved("6 jan", "stair window")
                .pot("T9", "Tuesday Coat", "tulip")
                .potted("1 oct", "cellar")
                .moved("6 jan", "stair window")
                .pot("X1", "Tuesday Coat", "tulip")
                .potted("1 oct");
        assertThat(pots(due.on("12 jan").today().due())).containsExactly(due.ids("X1"), due.ids("T9"), due.ids("T10"));
    }

    @Test
    void whatComesIsInTheOrderOfItsDays() {
        Winter soon = house().pot("T1", "Tuesday Coat", "tulip")
                .potted("8 oct", "cellar")
                .pot("T2", "Tuesday Coat", "tulip")
                .potted("6 oct", "cellar")
                .pot("T3", "Tuesday Coat", "tulip")
                .potted("7 nov", "cellar")
                .pot("T4", "Tuesday Coat", "tulip")
                .potted("6 nov", "cellar");
        Today read = soon.on("12 jan").today();
        assertThat(pots(read.soon())).containsExactly(soon.ids("T2"), soon.ids("T1"));
        assertThat(pots(read.later())).containsExactly(soon.ids("T4"), soon.ids("T3"));
        assertThat(pots(soon.on("5 jan").today().soon()))
                .as("14 days ahead, not 15")
                .containsExactly(soon.ids("T2"));
    }

    // Flowers

    @Test
    void whatBloomsTellsItsDay() {
        Winter bloom = house().pots("H1-H3", "Inkwell", "hyacinth")
                .potted("1 oct", "cellar")
                .moved("2 jan", "stair window")
                .then("H1 H2")
                .flowered("20 jan")
                .then("H3")
                .flowered("18 jan");
        assertThat(bloom.on("21 jan").today().inBloom())
                .satisfiesExactly(
                        first -> {
                            assertThat(first.pots()).isEqualTo(bloom.ids("H3"));
                            assertThat(first.dayOfBloom()).isEqualTo(4);
                            assertThat(first.outOf()).contains(10);
                        },
                        second -> {
                            assertThat(second.pots()).isEqualTo(bloom.ids("H1 H2"));
                            assertThat(second.dayOfBloom()).isEqualTo(2);
                            assertThat(second.job().orElseThrow().kind()).isEqualTo(JobKind.PAST_BLOOM);
                            assertThat(second.job().orElseThrow().pots()).isEqualTo(bloom.ids("H1 H2"));
                        });
        Today over = bloom.on("1 feb").today();
        assertThat(over.inBloom())
                .as("the third is asked for")
                .singleElement()
                .satisfies(left -> assertThat(left.pots()).isEqualTo(bloom.ids("H1 H2")));
        assertThat(pots(over.due())).containsExactly(bloom.ids("H3"));
    }

    @Test
    void oneScoreIsAskedForAtATimeThatOfTheBloomThatEndsFirst() {
        Winter bloom = house().pot("T1", "Tuesday Coat", "tulip")
                .potted("1 oct", "cellar")
                .moved("14 jan", "stair window")
                .flowered("2 feb")
                .pot("H1", "Inkwell", "hyacinth")
                .potted("1 oct", "cellar")
                .moved("2 jan", "stair window")
                .flowered("1 feb")
                .pot("H2", "Inkwell", "hyacinth")
                .potted("1 oct", "cellar")
                .moved("2 jan", "stair window")
                .flowered("2 feb");
        Today both = bloom.on("5 feb").today();
        assertThat(pots(both.due())).containsExactly(bloom.ids("H1"));
        assertThat(both.inBloom())
                .as("all bloom, and the others wait there to be scored")
                .extracting(Today.Blooming::pots, blooming -> blooming.job().map(Job.OfPots::kind))
                .containsExactlyInAnyOrder(
                        tuple(bloom.ids("H1"), Optional.empty()),
                        tuple(bloom.ids("T1"), Optional.of(JobKind.WRITE_OUTCOME)),
                        tuple(bloom.ids("H2"), Optional.of(JobKind.WRITE_OUTCOME)));
        Today answered = bloom.then("H1").outcome("5 feb", 4).on("5 feb").today();
        assertThat(pots(answered.due()))
                .as("the next follows the answer")
                .hasSize(1)
                .doesNotContain(bloom.ids("H1"));
    }

    @Test
    void whatFlowersInAWarmRoomIsAskedToStandCooler() {
        Winter bloom = house().pot("T1", "Tuesday Coat", "tulip")
                .potted("1 oct", "cellar")
                .moved("14 jan", "kitchen sill")
                .flowered("4 feb");
        Today read = bloom.on("5 feb").today();
        assertThat(read.ready()).isEmpty();
        assertThat(read.inBloom())
                .singleElement()
                .satisfies(blooming ->
                        assertThat(blooming.job().orElseThrow().kind()).isEqualTo(JobKind.KEEP_COOL_IN_BLOOM));
    }

    @Test
    void whatOpensNextComesLikeliestFirst() {
        Winter opening = house().pot("T1", "Tuesday Coat", "tulip")
                .potted("1 oct", "cellar")
                .pots("H1-H2", "Inkwell", "hyacinth")
                .potted("1 oct", "cellar")
                .moved("2 jan", "stair window")
                .pot("T2", "Tuesday Coat", "tulip");
        assertThat(opening.on("5 jan").today().opening())
                .extracting(Today.Opening::pots)
                .containsExactly(opening.ids("H1-H2"), opening.ids("T1"));
        assertThat(opening.on("5 jan").today().opening().get(0).firstFlower())
                .isEqualTo(new Window(opening.day("16 jan"), opening.day("23 jan"), opening.day("30 jan")));
    }

    // After that

    @Test
    void whatComesLaterIsSummedUpByWeeksThatEndOnSundays() {
        Winter later = house().pot("T1", "Tuesday Coat", "tulip")
                .potted("18 oct", "cellar")
                .pot("T2", "Tuesday Coat", "tulip")
                .potted("1 oct", "cellar")
                .saw("10 jan", Look.roots())
                .pot("T3", "Tuesday Coat", "tulip")
                .wish("14 jun", "T3")
                .pot("T4", "Tuesday Coat", "tulip")
                .potted("1 oct", "cellar")
                .moved("20 jan", "stair window");
        List<Today.Week> weeks = later.on("15 jan").today().afterThat();
        assertThat(weeks)
                .extracting(Today.Week::days)
                .containsExactly(
                        DaySpan.of(later.day("30 jan"), later.day("1 feb")),
                        DaySpan.of(later.day("1 feb"), later.day("8 feb")),
                        DaySpan.of(later.day("8 feb"), later.day("15 feb")));
        assertThat(weeks.get(0).coming()).containsExactly(new Today.Coming(Today.Coming.Sort.READY, later.ids("T1")));
        assertThat(weeks.get(1).coming()).contains(new Today.Coming(Today.Coming.Sort.TO_WARM_ROOM, later.ids("T1")));
        assertThat(later.on("24 jan").today().afterThat().get(1).coming())
                .contains(new Today.Coming(Today.Coming.Sort.PAST_BLOOM, later.ids("T4")));
        assertThat(later.on("10 jan").today().afterThat().get(0).coming())
                .contains(new Today.Coming(Today.Coming.Sort.USE_BY, later.ids("T2 T4")));
        assertThat(later.on("24 jan").today().afterThat())
                .flatExtracting(Today.Week::coming)
                .contains(new Today.Coming(Today.Coming.Sort.POT_UP, later.ids("T3")));
    }

    @Test
    void aMondayBeginsAFullWeek() {
        Winter any = house();
        assertThat(any.on("17 jan").today().afterThat().get(0).days())
                .isEqualTo(DaySpan.of(any.day("1 feb"), any.day("8 feb")));
    }

    // Done today

    @Test
    void whatWasDoneTodayIsToldOnceForAllItWasDoneTo() {
        Winter done = house().pots("T1-T3", "Tuesday Coat", "tulip")
                .potted("1 oct", "cellar")
                .checked("12 jan")
                .then("T2")
                .cared("12 jan", Care.WATERED)
                .checked("11 jan");
        assertThat(done.on("12 jan").today().done())
                .satisfiesExactly(
                        checked -> {
                            assertThat(checked.subjects())
                                    .hasSize(3)
                                    .first()
                                    .isEqualTo(new Subject.OfPot(done.id("T1")));
                            assertThat(checked.what()).isInstanceOf(Happening.Checked.class);
                        },
                        watered -> assertThat(watered.what()).isEqualTo(new Happening.Cared(Care.WATERED)));
    }

    @Test
    void whatWasWrittenAtOnceStandsByLabel() {
        Winter done = house().pots("T1-T2", "Tuesday Coat", "tulip")
                .potted("1 oct", "cellar")
                .then("T2")
                .cared("12 jan", Care.WATERED)
                .then("T1")
                .cared("12 jan", Care.TURNED);
        assertThat(done.on("12 jan").today().done())
                .extracting(Today.Done::what)
                .containsExactly(new Happening.Cared(Care.TURNED), new Happening.Cared(Care.WATERED));
    }

    @Test
    void anEmptyBookAsksForNothing() {
        Today nothing = winter().on("12 jan").today();
        assertThat(nothing.late()).isEmpty();
        assertThat(nothing.later()).isEmpty();
        assertThat(nothing.dailyCare()).isEmpty();
        assertThat(nothing.afterThat()).extracting(Today.Week::coming).containsOnly(List.of());
    }
}
