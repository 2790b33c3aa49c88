// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.handbook.FigureName;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Kind;
import sillbook.model.Place;
import sillbook.model.Place.Hazard;
import sillbook.model.Place.Sort;
import sillbook.season.Today.Attention;

/** Bulbs that wait dry: ten of a purchase for each pot, five of them meant for it. A fridge is asked for every 14 days. */
class DryBulbsTest {
    private final Winter house = winter().place("porch", Sort.PORCH)
            .place("shed", Sort.OTHER)
            .every(0)
            .place("fridge", Sort.FRIDGE);

    private Winter tulips() {
        return house.pot("T1", "Tuesday Coat", "tulip").bought("1 sep", "fridge");
    }

    private Optional<Job.Round> round(String today, String place) {
        return house.on(today).places().stream()
                .filter(there -> there.place().id().equals(house.placeId(place)))
                .flatMap(there -> there.round().stream())
                .findFirst();
    }

    private List<Attention> attention(String today) {
        return house.on(today).today().places();
    }

    private Id<Place> fridge() {
        return house.placeId("fridge");
    }

    // The weekly look (common practice)

    @Test
    void theyAreAskedForWeeklyThoughPotsThereAreNot() {
        tulips();
        Job.Round round = round("2 sep", "fridge").orElseThrow();
        assertThat(round.pots()).isEmpty();
        assertThat(round.bulbs()).hasSize(1);
        assertThat(round.everyDays()).isEqualTo(7);
        assertThat(round.on()).isEqualTo(house.day("8 sep"));
        house.then("T1").felt("8 sep");
        assertThat(round("9 sep", "fridge").orElseThrow().on()).isEqualTo(house.day("15 sep"));
    }

    @Test
    void aLookOfADayToComeOrOfBeforeTheyCameSaysNothing() {
        tulips().felt("20 sep").felt("5 aug");
        assertThat(round("9 sep", "fridge").orElseThrow().last()).isEqualTo(house.day("1 sep"));
    }

    @Test
    void potsAndBulbsOfOnePlaceAreOneRound() {
        tulips().pot("H1", "Inkwell", "hyacinth").potted("3 sep", "fridge");
        Job.Round round = round("4 sep", "fridge").orElseThrow();
        assertThat(round.pots()).isEqualTo(house.ids("H1"));
        assertThat(round.bulbs()).hasSize(1);
        house.checked("8 sep");
        assertThat(round("9 sep", "fridge").orElseThrow().on())
                .as("the bulbs were not felt")
                .isEqualTo(house.day("8 sep"));
    }

    @Test
    void aPlaceThatIsNeverAskedForIsForThemAndOneOfDailyCareForThemAlone() {
        house.pot("T1", "Tuesday Coat", "tulip").bought("1 sep", "shed");
        house.pot("T2", "Tuesday Coat", "tulip").bought("1 sep", "porch").potted("2 sep", "porch");
        house.pot("P1", "Linen Parade", "paperwhite").bought("1 sep", "porch");
        assertThat(round("2 sep", "shed").orElseThrow().everyDays()).isEqualTo(7);
        Job.Round porch = round("2 sep", "porch").orElseThrow();
        assertThat(porch.pots()).as("they belong to the daily care").isEmpty();
        assertThat(porch.everyDays()).isEqualTo(7);
    }

    @Test
    void aPlaceAskedForMoreOftenStaysSo() {
        house.every(3);
        tulips();
        assertThat(round("2 sep", "fridge").orElseThrow().everyDays()).isEqualTo(3);
    }

    @Test
    void onceAllArePottedNothingIsAskedAnyMore() {
        tulips().pot("T2", "Tuesday Coat", "tulip");
        assertThat(house.on("2 sep").dryAt(fridge()))
                .singleElement()
                .extracting(WaitingBulbs::bulbs)
                .isEqualTo(10);
        house.then("T1").potted("8 sep", "shed");
        assertThat(house.on("9 sep").dryAt(fridge()))
                .singleElement()
                .extracting(WaitingBulbs::bulbs)
                .isEqualTo(5);
        assertThat(round("9 sep", "fridge")).isPresent();
    }

    @Test
    void bulbsOnTheirWayAndThoseLeftOverFromAnotherWinterAreNotAskedFor() {
        house.pot("T1", "Tuesday Coat", "tulip").ordered("1 sep", "fridge");
        assertThat(round("2 sep", "fridge")).isEmpty();
        house.of(2025)
                .pot("T9", "Goose Errand", "tulip")
                .bought("1 sep", "fridge")
                .of(2026);
        assertThat(house.on("2 sep").places())
                .filteredOn(there -> there.place().id().equals(fridge()))
                .allSatisfy(there -> {
                    assertThat(there.waiting())
                            .as("they lie there all the same")
                            .hasSize(1);
                    assertThat(there.round()).isEmpty();
                });
        assertThat(attention("2 sep")).isEmpty();
    }

    @Test
    void aRoundOfThemIsPutOffAndLeftOutLikeAnother() {
        tulips();
        house.roundLeftOut("8 sep", JobKind.CHECK);
        assertThat(round("9 sep", "fridge").orElseThrow().on()).isEqualTo(house.day("15 sep"));
    }

    // How long

    /**
     * Of 15 weeks 10 may be had dry (Oklahoma State University, HortScience 29, 1994), not more than 9 by the tables of the trade's
     * research group for tulips: from 9 weeks on it is said, and 10 are the day to pot by.
     */
    @ParameterizedTest
    @CsvSource({
        "2 nov, ",
        "3 nov, 2026-11-10",
        "9 nov, 2026-11-10",
        "24 nov, 2026-11-10",
    })
    void fromNineWeeksOnTheyAreToBePotted(String today, LocalDate potBy) {
        tulips();
        List<Attention> said = attention(today).stream()
                .filter(Attention.DryLong.class::isInstance)
                .toList();
        if (potBy == null) {
            assertThat(said).isEmpty();
        } else {
            WaitingBulbs bulbs = house.on(today).dryAt(fridge()).get(0);
            assertThat(said).containsExactly(new Attention.DryLong(fridge(), bulbs, potBy));
        }
    }

    @Test
    void whatTheyWereCooledBeforeTheyCameCounts() {
        house.pot("T1", "Tuesday Coat", "tulip").cooled(6).bought("1 sep", "fridge");
        assertThat(house.on("22 sep").dryAt(fridge()))
                .singleElement()
                .satisfies(bulbs -> assertThat(bulbs.isLong()).isFalse());
        WaitingBulbs cooled = house.on("22 sep").dryAt(fridge()).get(0);
        WaitingBulbs sixWeeks = new WaitingBulbs(
                cooled.purchase(), 10, new DryCold(Optional.of(42), 21), cooled.limit(), Optional.empty());
        assertThat(sixWeeks.isLong()).isTrue();
        assertThat(sixWeeks.potBy(house.day("22 sep"))).contains(house.day("29 sep"));
    }

    @Test
    void whereItIsNotColdNoWeeksAreHadAndNothingPresses() {
        house.pot("T1", "Tuesday Coat", "tulip").bought("1 sep", "porch");
        assertThat(attention("24 nov")).noneMatch(Attention.DryLong.class::isInstance);
    }

    @Test
    void aKindWithoutColdHasNoLimit() {
        house.pot("P1", "Linen Parade", "paperwhite").bought("1 sep", "fridge");
        assertThat(house.on("24 nov").dryAt(fridge()).get(0).limit()).isEmpty();
        assertThat(attention("24 nov")).noneMatch(Attention.DryLong.class::isInstance);
    }

    @Test
    void ofAFigureThatNobodyCanMeanTheLongestIsTaken() {
        tulips();
        house.own(Kind.of("tulip"), FigureName.DRY_COLD, 9, 1e6, 1e6);
        assertThat(attention("24 nov")).hasSize(2);
    }

    @Test
    void foodAndFruitBesideThem() {
        house.beside(Hazard.FRUIT);
        tulips();
        assertThat(attention("2 sep")).containsExactly(new Attention.BesideHazard(fridge(), 0, 10, Hazard.FRUIT));
    }
}
