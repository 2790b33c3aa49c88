// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static sillbook.season.Winter.winter;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sillbook.model.JobKind;
import sillbook.model.Place.Sort;
import sillbook.season.Winter.Look;

/** Jobs and deadlines as values, and how those of a batch are drawn together. */
class JobTest {
    private final Winter house = winter().place("cellar", Sort.CELLAR)
            .place("stair", Sort.COOL_ROOM)
            .place("sill", Sort.WARM_SILL)
            .pots("T1-T6", "Tuesday Coat", "tulip")
            .potted("1 oct", "cellar");

    private List<Job.OfPots> rows(String today) {
        Today read = house.on(today).today();
        return Stream.of(read.late(), read.ready(), read.due(), read.soon(), read.later())
                .flatMap(List::stream)
                .toList();
    }

    @Test
    void aBatchThatAgreesIsOneRow() {
        assertThat(rows("20 dec")).singleElement().satisfies(job -> {
            assertThat(job.pots()).isEqualTo(house.ids("T1-T6"));
            assertThat(job.batch().orElseThrow().isParted()).isFalse();
        });
    }

    @Test
    void whatWasSeenOfSomePartsIt() {
        house.then("T1 T2").saw("10 jan", Look.roots()).then("T3 T4 T5 T6").saw("10 jan", Look.noRoots());
        assertThat(rows("14 jan")).extracting(Job.OfPots::pots).containsExactly(house.ids("T1 T2"), house.ids("T3-T6"));
        assertThat(rows("14 jan")).extracting(job -> job.batch().isPresent()).containsExactly(false, true);
    }

    @Test
    void soDoesAWishOrAnAnswerOrAPlace() {
        house.place("frame", Sort.COLD_FRAME)
                .then("T1")
                .wish("14 feb", "T1")
                .then("T2")
                .putOff("19 dec", JobKind.BRING_IN, "20 jan");
        house.then("T3").moved("1 dec", "frame");
        assertThat(rows("20 dec")).hasSize(4);
    }

    @Test
    void ofTwoHalvesTheFirstStandsForAll() {
        house.then("T4 T5 T6").moved("20 dec", "stair");
        assertThat(rows("21 dec"))
                .filteredOn(job -> job.batch().isPresent())
                .singleElement()
                .satisfies(job -> assertThat(job.pots()).isEqualTo(house.ids("T1-T3")));
    }

    @Test
    void daysLateAreNeverBelowNothing() {
        Job.OfPots job = rows("20 dec").get(0);
        assertThat(job.daysLate(house.day("20 dec"))).isZero();
        assertThat(job.daysLate(house.day("29 jan"))).isEqualTo(1);
        Job.OfPots without = rows("15 sep").get(0);
        assertThat(without.deadline()).isEmpty();
        assertThat(without.daysLate(house.day("29 jan"))).isZero();
    }

    @Test
    void coldDaysAreAPartOfTheDaysInTheCold() {
        assertThatIllegalArgumentException().isThrownBy(() -> ColdCount.assumed(3, 4));
        assertThatIllegalArgumentException().isThrownBy(() -> ColdCount.assumed(3, -1));
    }

    @Test
    void everyJobAndDeadlineAnswersToItsCase() {
        house.then("T1").moved("14 jan", "stair");
        Today today = house.wish("14 feb", "T2").on("24 jan").today();
        Job.Cases<String> names = new Job.Cases<>() {
            @Override
            public String ofPots(Job.OfPots job) {
                return "pots";
            }

            @Override
            public String round(Job.Round job) {
                return "round";
            }

            @Override
            public String dailyCare(Job.DailyCare job) {
                return "daily";
            }

            @Override
            public String ofGround(Job.OfGround job) {
                return "ground";
            }
        };
        assertThat(today.due().get(0).<String>fold(names)).isEqualTo("pots");
        assertThat(today.checks().get(0).<String>fold(names)).isEqualTo("round");
        Job.DailyCare care = today.dailyCare().orElseThrow();
        assertThat(care.<String>fold(names)).isEqualTo("daily");
        assertThat(List.of(today.checks().get(0).kind(), care.kind()))
                .containsExactly(JobKind.CHECK, JobKind.DAILY_CARE);
        assertThat(care.due()).isEqualTo(Due.TODAY);
        assertThat(care.window().likely()).isEqualTo(house.day("24 jan"));
        assertThat(Job.class.getPermittedSubclasses()).hasSize(4);
        Job dig = JobScene.of(JobKind.DIG_TRENCH).outlook().today().ground().get(0);
        assertThat(dig.<String>fold(names)).isEqualTo("ground");
    }

    @Test
    void aDeadlineSaysWhatItIsFor() {
        Deadline.Cases<String> names = new Deadline.Cases<>() {
            @Override
            public String useBy(Deadline.UseBy deadline) {
                return "use by";
            }

            @Override
            public String forWish(Deadline.ForWish deadline) {
                return "wish";
            }
        };
        house.saw("10 jan", Look.roots()).wish("14 feb", "T2");
        assertThat(house.on("15 jan")
                        .pot(house.id("T1"))
                        .next()
                        .orElseThrow()
                        .deadline()
                        .orElseThrow()
                        .<String>fold(names))
                .isEqualTo("use by");
        assertThat(house.on("15 jan")
                        .pot(house.id("T2"))
                        .next()
                        .orElseThrow()
                        .deadline()
                        .orElseThrow()
                        .<String>fold(names))
                .isEqualTo("wish");
        assertThat(Deadline.class.getPermittedSubclasses()).hasSize(2);
    }
}
