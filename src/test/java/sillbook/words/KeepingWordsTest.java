// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.handbook.Handbook;
import sillbook.model.Place.Sort;
import sillbook.model.Pot.Way;
import sillbook.model.Settings.LengthUnit;
import sillbook.season.Winter;

/**
 * How pots are kept after the cold. Low light in the cool room and on at 10 to 15 cm (Iowa State University 2015; Rutgers 2014, Colorado State);
 * a paper bag over hyacinths (Rutgers 2014); in flower out of the sun and at most 22 C (University of Illinois 2005).
 */
class KeepingWordsTest {
    private final Winter house =
            winter().place("cellar", Sort.CELLAR).place("stair", Sort.COOL_ROOM).place("sill", Sort.WARM_SILL);

    private List<String> says(String label) {
        return new KeepingWords(Handbook.standard(), LengthUnit.CENTIMETRES, house.day("12 jan"))
                .say(house.on("12 jan").pot(house.id(label)));
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

    /**
     * The level of the water: just below the bulb (Royal Horticultural Society), just touching it (a hyacinth glass column), only its
     * base in it (North Carolina State University).
     */
    @Test
    void aGlassIsToldItsLevelAboutWhichSourcesDiffer() {
        house.pot("H1", "Inkwell", "hyacinth").grown(Way.GLASS).potted("21 sep", "cellar");

        assertThat(says("H1"))
                .containsExactly(
                        "Fill up with water to just below the bulb. (▫) Others let the water just touch the bulb, (▫) "
                                + "or let only its base stand in water. (▫)",
                        "Top it up as it falls; change it when it is cloudy. (common practice)",
                        "Dark and cool until the roots are long. (common practice)");
        house.moved("10 jan", "stair");
        assertThat(says("H1")).noneMatch(text -> text.startsWith("Dark and cool") || text.contains("spirit"));
    }

    /** 1 part of 40 % spirit to 7 of water, 4 to 6 %, 10 harms, from shoots of 3 to 5 cm (Cornell University, 2012). */
    @Test
    void paperwhitesOverWaterMayBeKeptShortWithSpirit() {
        house.pot("P1", "Linen Parade", "paperwhite").grown(Way.PEBBLES).potted("20 dec", "stair");
        String spirit =
                "To keep it short: once its shoots have 3 cm to 5 cm give spirit with the water, 1 part of 40 % spirit to 7 "
                        + "parts of water: 5 % alcohol, 4 to 6 do it, 10 harm (▫). No beer, no wine. Nobody must drink it: keep it from "
                        + "children and pets.";

        assertThat(says("P1")).contains(spirit);
        assertThat(says("P1")).as("long rooted").noneMatch(text -> text.startsWith("Dark and cool"));
        house.pot("P4", "Linen Parade", "paperwhite").grown(Way.PEBBLES).potted("30 dec", "stair");
        assertThat(says("P4")).anyMatch(text -> text.startsWith("Dark and cool"));
        house.pot("P2", "Linen Parade", "paperwhite").potted("20 dec", "stair");
        assertThat(says("P2")).as("never into potting mix").doesNotContain(spirit);
        house.mixed("P3", "Linen Parade", "paperwhite", "Inkwell", "hyacinth")
                .grown(Way.GLASS)
                .potted("20 dec", "stair");
        assertThat(says("P3")).doesNotContain(spirit);
        house.then("P1").flowered("10 jan");
        assertThat(says("P1")).as("too late").doesNotContain(spirit);
        house.then("P1").pastBloom("11 jan");
        assertThat(says("P1"))
                .as("thrown away by default (Iowa State University), dried off by others (Royal Horticultural Society)")
                .containsExactly(
                        "Throw it away; it cannot be forced again. (▫)",
                        "Or dry it off, and plant it in a container again where it is not hardy. (▫)");
    }

    @Test
    void aBowlIsTippedAfterWatering() {
        house.pot("C1", "Penny Gloaming", "crocus").grown(Way.BOWL).potted("21 sep", "cellar");

        assertThat(says("C1"))
                .containsExactly("After watering tip the bowl until what is too much has run out. (common practice)");
        house.pot("C2", "Penny Gloaming", "crocus").grown(Way.BOWL);
        assertThat(says("C2")).as("not potted yet").isEmpty();
    }

    @Test
    void aMixedPotIsToldForEachOfItsKinds() {
        house.mixed("T1", "Tuesday Coat", "tulip", "Inkwell", "hyacinth")
                .potted("21 sep", "cellar")
                .moved("10 jan", "stair");

        assertThat(says("T1")).hasSize(3).first().isEqualTo("Low to middling light, or none direct. (▫)");
    }
}
