// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import sillbook.model.Happening.Care;
import sillbook.model.Place.Sort;
import sillbook.season.PotLife;
import sillbook.season.Winter;

class YearWordsTest {
    private final Winter house = Winter.winter()
            .place("sill", Sort.WARM_SILL)
            .pot("A1", "Lantern Row", "amaryllis")
            .potted("20 nov", "sill");

    private PotLife life(String day) {
        return house.on(day).pot(house.id("A1")).life();
    }

    @Test
    void theFirstWinterIsNotCounted() {
        assertThat(YearWords.which(life("1 dec"))).isEmpty();
        assertThat(new YearWords(house.journal()).past(life("1 dec"))).isEmpty();
    }

    @Test
    void eachWinterThatIsOverIsToldWithItsBloomAndItsScore() {
        house.flowered("10 jan").pastBloom("10 feb").outcome("11 feb", 4);
        house.of(2027).cared("18 nov", Care.WOKEN).cared("1 may", Care.RESTED);
        house.of(2028).cared("20 nov", Care.WOKEN).flowered("3 jan").of(2029).cared("20 nov", Care.WOKEN);
        assertThat(YearWords.which(life("1 dec"))).isEqualTo("winter 4");
        assertThat(new YearWords(house.journal()).past(life("1 dec")))
                .containsExactly(
                        "2026-27: in flower 10 Jan to 10 Feb, outcome 4 of 5",
                        "2027-28: no flower written",
                        "2028-29: in flower from 3 Jan");
    }
}
