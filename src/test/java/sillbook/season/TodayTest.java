// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.util.Map;
import org.junit.jupiter.api.Test;
import sillbook.model.JobKind;
import sillbook.model.Place.Sort;
import sillbook.model.Stage;
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
}
