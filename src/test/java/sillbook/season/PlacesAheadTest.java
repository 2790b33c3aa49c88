// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.model.Id;
import sillbook.model.Place.Sort;
import sillbook.model.Pot;

/**
 * Who stands where in two weeks. Cold since 3 October, the tulips' 15 weeks are had on 16 January; each would then be
 * five days in the cool room.
 */
class PlacesAheadTest {
    private final Winter house = winter().place("cellar", Sort.CELLAR)
            .room(20)
            .place("step", Sort.COOL_ROOM)
            .room(2)
            .place("ledge", Sort.WARM_SILL)
            .room(3)
            .pots("T1-T9", "Tuesday Coat", "tulip")
            .potted("3 oct", "cellar");

    private PlaceNow at(String today, String place) {
        return house.on(today).places().stream()
                .filter(now -> now.place().name().equals(place))
                .findFirst()
                .orElseThrow();
    }

    private List<String> labels(List<Id<Pot>> pots) {
        return pots.stream().map(house.journal().pots()::get).map(Pot::label).toList();
    }

    @Test
    void noPlaceIsForetoldFullerThanItsRoom() {
        assertThat(labels(at("4 jan", "step").inTwoWeeks())).containsExactly("T1", "T2");
        assertThat(at("4 jan", "step").leftInTwoWeeks()).contains(0);
        assertThat(at("4 jan", "step").kept()).isEmpty();
        assertThat(labels(at("4 jan", "cellar").inTwoWeeks()))
                .containsExactly("T3", "T4", "T5", "T6", "T7", "T8", "T9");
        assertThat(at("4 jan", "cellar").kept()).isEqualTo(at("4 jan", "cellar").inTwoWeeks());
        assertThat(at("4 jan", "cellar").leftInTwoWeeks()).contains(13);
    }

    /** The first two leave the step on 21 January; of the two that follow them one finds the ledge full on the 26th. */
    @Test
    void aPotKeptWaitingGoesOnAsSoonAsAnotherLeavesAndIsLaterByThat() {
        assertThat(labels(at("15 jan", "ledge").inTwoWeeks())).containsExactly("T1", "T2", "T3");
        assertThat(labels(at("15 jan", "step").inTwoWeeks())).containsExactly("T4", "T5");
        assertThat(labels(at("15 jan", "step").kept())).containsExactly("T4");
        assertThat(labels(at("15 jan", "cellar").kept())).containsExactly("T6", "T7", "T8", "T9");
    }

    @Test
    void aSecondPlaceTakesWhatTheFirstHasNoRoomFor() {
        house.place("porch", Sort.PORCH);

        assertThat(at("4 jan", "step").inTwoWeeks()).hasSize(2);
        assertThat(at("4 jan", "porch").inTwoWeeks()).hasSize(7);
        assertThat(at("4 jan", "porch").leftInTwoWeeks()).isEmpty();
        assertThat(at("4 jan", "cellar").inTwoWeeks()).isEmpty();
    }

    @Test
    void potsThatArePottedByThenAndPotsThatAreClearedAwayAreCounted() {
        Winter other = winter().place("cellar", Sort.CELLAR)
                .room(1)
                .place("ledge", Sort.WARM_SILL)
                .pots("T1-T2", "Tuesday Coat", "tulip")
                .pot("P1", "Linen Parade", "paperwhite")
                .potted("1 aug", "ledge")
                .flowered("1 sep")
                .pastBloom("15 sep");
        List<PlaceNow> places = other.on("10 oct").places();

        assertThat(places).extracting(place -> place.pots().size()).containsExactly(0, 1);
        assertThat(places).extracting(place -> place.inTwoWeeks().size()).containsExactly(1, 0);
        assertThat(places.get(0).kept()).isEmpty();
    }

    /** Past bloom, a paperwhite is cleared away; another, in the cool room since 28 December, is due to warmth on the 11th. */
    @Test
    void whatIsClearedAwayMakesRoomForAnother() {
        Winter ledge = winter().place("cellar", Sort.CELLAR)
                .place("ledge", Sort.WARM_SILL)
                .room(1)
                .pot("P1", "Linen Parade", "paperwhite")
                .potted("10 nov", "ledge")
                .flowered("20 dec")
                .pastBloom("5 jan")
                .place("stair", Sort.COOL_ROOM)
                .pot("P2", "Linen Parade", "paperwhite")
                .potted("28 dec", "stair");
        List<PlaceNow> places = ledge.on("6 jan").places();

        assertThat(places.get(1).pots()).containsExactly(ledge.id("P1"));
        assertThat(places.get(1).inTwoWeeks()).containsExactly(ledge.id("P2"));
    }

    /** Its 15 weeks are had on 16 January, and five days of a cool room there is none of later it is carried to the sill. */
    @Test
    void aHouseWithoutACoolRoomCarriesItsPotsToTheWarmOne() {
        Winter small = winter().place("fridge", Sort.FRIDGE)
                .place("ledge", Sort.WARM_SILL)
                .pot("T1", "Tuesday Coat", "tulip")
                .potted("3 oct", "fridge");

        assertThat(small.on("4 jan").places().get(0).kept()).isEmpty();
        assertThat(small.on("15 jan").places())
                .extracting(place -> place.inTwoWeeks().size())
                .containsExactly(0, 1);
    }
}
