// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.handbook.Handbook;
import sillbook.model.Place.Sort;
import sillbook.season.Winter;

/**
 * How pots are kept after the cold. Low light in the cool room and on at 10 to 15 cm (Iowa State University 2015; Rutgers 2014, Colorado State);
 * a paper bag over hyacinths (Rutgers 2014); in flower out of the sun and at most 22 C (University of Illinois 2005).
 */
class KeepingWordsTest {
    private final Winter house =
            winter().place("cellar", Sort.CELLAR).place("stair", Sort.COOL_ROOM).place("sill", Sort.WARM_SILL);

    private List<String> says(String label) {
        return new KeepingWords(Handbook.standard()).say(house.on("12 jan").pot(house.id(label)));
    }

    @Test
    void inTheColdThereIsNothingToSay() {
        house.pot("T1", "Tuesday Coat", "tulip").potted("21 sep", "cellar");

        assertThat(says("T1")).isEmpty();
    }

    @Test
    void inTheCoolRoomItIsTheLightAndTheSignThatEndsIt() {
        house.pot("T1", "Tuesday Coat", "tulip").potted("21 sep", "cellar").moved("10 jan", "stair");

        assertThat(says("T1"))
                .containsExactly(
                        "Low to middling light, or none direct. (▫)",
                        "Move on when the leaves are 10 to 15 cm high and green (▫), or buds show. Days only where nobody looked.");
    }

    @Test
    void aHyacinthIsKeptDimUntilItsStemIsOut() {
        house.pot("H1", "Inkwell", "hyacinth").potted("21 sep", "cellar").moved("10 jan", "stair");

        assertThat(says("H1")).first().isEqualTo("Dim, or under a paper bag, until the stem clears the leaves. (▫)");
    }

    @Test
    void atColourItWantsToBeCooler() {
        house.pot("T1", "Tuesday Coat", "tulip")
                .potted("21 sep", "cellar")
                .moved("1 jan", "stair")
                .moved("8 jan", "sill");

        assertThat(says("T1"))
                .last()
                .isEqualTo("Once the first bud shows its colour: out of direct sun and not above 22 C. "
                        + "The cooler it is, the longer the flowers last. (▫)");
        house.flowered("11 jan");
        assertThat(says("T1"))
                .containsExactly(
                        "Out of direct sun and not above 22 C. The cooler it is, the longer the flowers last. (▫)");
    }

    @Test
    void aMixedPotIsToldForEachOfItsKinds() {
        house.mixed("T1", "Tuesday Coat", "tulip", "Inkwell", "hyacinth")
                .potted("21 sep", "cellar")
                .moved("10 jan", "stair");

        assertThat(says("T1")).hasSize(3).first().isEqualTo("Low to middling light, or none direct. (▫)");
    }
}
