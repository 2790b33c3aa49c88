// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Place.Sort;

/** Tulips need 15 weeks, 30 cells. */
class ColdBarTest {
    private static Optional<ColdBar> on(Winter house, String day) {
        return ColdBar.of(house.journal(), house.on(day).pot(house.id("T1")), house.day(day));
    }

    private static Winter tulip(Winter house) {
        return house.pot("T1", "Marrow Lane", "tulip").potted("1 oct", "cellar");
    }

    private static Winter cellar() {
        return Winter.winter().place("cellar", Sort.CELLAR);
    }

    @Test
    void aCellIsHalfAWeekOfWhatCountsReadOrAssumed() {
        Winter house = tulip(cellar().logged("1 oct", "14 oct", 10.333).logged("25 oct", "28 oct", 5));
        ColdBar bar = on(house, "29 oct").orElseThrow();
        assertThat(bar).isEqualTo(new ColdBar(List.of(true, true, true, false, false, true), 30));
        assertThat(bar.toCome()).isEqualTo(24);
    }

    @Test
    void nothingReadOrNoColdNeededIsNoBar() {
        assertThat(on(tulip(cellar()), "29 oct")).isEmpty();
        assertThat(on(
                        cellar().logged("1 oct", "28 oct", 5)
                                .pot("T1", "Linen Parade", "paperwhite")
                                .potted("1 oct", "cellar"),
                        "29 oct"))
                .isEmpty();
    }

    @Test
    void nothingIsToComeOnceItIsHad() {
        assertThat(on(tulip(cellar().logged("1 oct", "28 feb", 5)), "1 mar")
                        .orElseThrow()
                        .toCome())
                .isZero();
    }
}
