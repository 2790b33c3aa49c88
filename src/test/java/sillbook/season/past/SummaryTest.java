// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Happening.End;
import sillbook.model.Place.Sort;
import sillbook.model.Season;
import sillbook.reckon.effects.Proportion;
import sillbook.season.Winter;
import sillbook.season.past.Summary.Cold;

class SummaryTest {
    private static final Season FIRST = new Season(2026);

    private static Winter house() {
        return winter().place("cellar", Sort.CELLAR)
                .place("fridge", Sort.FRIDGE)
                .place("sill", Sort.WARM_SILL);
    }

    private static Summary summary(Winter house, String day) {
        return Winters.of(house.journal(), house.day(day)).summary(FIRST);
    }

    private static Winter two() {
        return house().pot("T1", "Marrow Lane", "tulip")
                .potted("1 oct", "cellar")
                .moved("8 jan", "sill")
                .flowered("1 feb")
                .outcome("5 feb", 5)
                .pastBloom("11 feb")
                .pot("T2", "Tuesday Coat", "tulip")
                .potted("1 oct", "fridge")
                .moved("14 jan", "sill")
                .flowered("6 feb")
                .outcome("8 feb", 2)
                .pastBloom("21 feb");
    }

    @Test
    void aDayWithTwoPotsInBloomIsOneDayWithBloom() {
        Summary summary = summary(two(), "1 mar");
        assertThat(summary.pots()).isEqualTo(2);
        assertThat(summary.flowered()).isEqualTo(2);
        assertThat(summary.daysWithBloom()).as("1 to 20 Feb").contains(20L);
    }

    @Test
    void theBestAndTheWorstAreNamedWhereTheyDiffer() {
        Winter house = two();
        Summary summary = summary(house, "1 mar");
        assertThat(summary.best())
                .containsExactly(house.journal()
                        .pot(FIRST, "T1")
                        .orElseThrow()
                        .plantings()
                        .get(0)
                        .variety());
        assertThat(summary.worst())
                .containsExactly(house.journal()
                        .pot(FIRST, "T2")
                        .orElseThrow()
                        .plantings()
                        .get(0)
                        .variety());
        Summary alone = summary(
                house().pot("T1", "Marrow Lane", "tulip").potted("1 oct").outcome("5 feb", 5), "1 mar");
        assertThat(alone.best()).isEmpty();
        assertThat(alone.worst()).isEmpty();
    }

    @Test
    void theColdIsThatOfThePotsThatHadAny() {
        assertThat(summary(two(), "1 mar").cold()).contains(new Cold(99, 105, 105));
        Winter without = house().pot("P1", "Linen Parade", "paperwhite").potted("1 dec", "sill");
        assertThat(summary(without, "1 jan").cold()).isEmpty();
    }

    @Test
    void aMixedPotIsOnePotAndItsFlowersCountOnce() {
        Winter house = house().mixed("M1", "Inkwell", "hyacinth", "Lantern Row", "daffodil")
                .potted("1 oct", "cellar")
                .outcome("1 mar", 3);
        Summary summary = summary(house, "1 apr");
        assertThat(summary.pots()).isEqualTo(1);
        assertThat(summary.tally().pots()).as("each variety is judged").isEqualTo(2);
        assertThat(summary.bulbs()).as("nobody counted").isEqualTo(new Proportion(0, 0));
    }

    @Test
    void aBloomThatNobodyWroteTheEndOfEndsWithTheWinter() {
        Winter house = house().pot("T1", "Marrow Lane", "tulip")
                .potted("1 oct", "cellar")
                .flowered("21 jun");
        assertThat(Winters.of(house.journal(), house.day("21 jun").plusYears(2))
                        .summary(FIRST)
                        .daysWithBloom())
                .contains(10L);
    }

    @Test
    void ofAWinterWithoutAnythingNothingIsSaid() {
        Summary summary = summary(house(), "1 mar");
        assertThat(summary.pots()).isZero();
        assertThat(summary.daysWithBloom()).isEmpty();
        assertThat(summary.cold()).isEqualTo(Optional.empty());
        Summary failed = summary(
                house().pot("T1", "Marrow Lane", "tulip")
                        .potted("1 oct", "cellar")
                        .closed("1 feb", End.FAILED),
                "1 mar");
        assertThat(failed.flowered()).isZero();
        assertThat(failed.tally().pots()).isEqualTo(1);
    }
}
