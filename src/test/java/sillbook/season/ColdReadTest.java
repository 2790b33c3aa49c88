// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Place.Sort;

class ColdReadTest {
    private static Winter fridge() {
        return Winter.winter().place("fridge", Sort.FRIDGE);
    }

    /** A tulip that stood in the fridge, whatever was read there, in October, then ten days in the cellar. */
    private static Winter tulip(Winter house) {
        return house.place("cellar", Sort.CELLAR)
                .read("31 oct", "5 nov", 10, 11)
                .place("sill", Sort.WARM_SILL)
                .pot("T1", "Marrow Lane", "tulip")
                .potted("1 oct", "fridge")
                .moved("31 oct", "cellar")
                .moved("10 nov", "sill");
    }

    private static Optional<ColdRead> on(Winter house, String day) {
        return ColdRead.of(house.journal(), house.on(day).pot(house.id("T1")).life(), house.day(day));
    }

    @Test
    void nothingReadIsNothingSaid() {
        assertThat(on(tulip(fridge()), "30 oct")).isEmpty();
    }

    @Test
    void onlyTheDaysItStoodThereCount() {
        Winter house = tulip(fridge().read("20 sep", "11 oct", 3, 8).read("21 oct", "10 nov", 1, 8));
        assertThat(on(house, "30 oct")).contains(new ColdRead(29, 19, 14.5, 19));
        assertThat(on(house, "20 dec")).contains(new ColdRead(40, 25, 17.5, 23.75));
    }

    @Test
    void ofTwoReadingsTheOneThatBeganFirstHolds() {
        Winter house = tulip(fridge().read("6 oct", "16 oct", 14, 20)
                .read("1 oct", "11 oct", 3, 8)
                .read("2 oct", "9 oct", 15, 16));
        assertThat(on(house, "30 oct")).contains(new ColdRead(29, 15, 10, 10));
    }
}
