// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Band;
import sillbook.model.JobKind;
import sillbook.model.Place.Sort;
import sillbook.model.Temperature;
import sillbook.season.PlaceClimate.Side;
import sillbook.season.PlaceClimate.Strayed;
import sillbook.season.PlaceClimate.Trial;
import sillbook.season.Today.Attention;

class ClimateAttentionTest {
    private static final Band BAND = Band.ofCelsius(2, 9);

    private static Winter cellar() {
        return Winter.winter().withoutDailyCare().place("cellar", Sort.CELLAR).every(0);
    }

    private static Winter tulip(Winter house) {
        return house.pot("T1", "Marrow Lane", "tulip").potted("1 oct", "cellar");
    }

    private static List<Attention> on(Winter house, String day) {
        return house.on(day).today().places();
    }

    private static List<String> codes(Winter house, String day) {
        return on(house, day).stream().map(Attention::code).toList();
    }

    @Test
    void aPlaceThatWasNeverReadSaysNothing() {
        assertThat(on(tulip(cellar()), "12 jan")).isEmpty();
    }

    @Test
    void outOfItsBandIsSaidWherePotsStand() {
        Winter house = tulip(cellar().logged("1 jan", "9 jan", 8).logged("10 jan", "12 jan", 9.6));
        assertThat(on(house, "12 jan"))
                .containsExactly(new Attention.OutOfBand(
                        house.placeId("cellar"),
                        new Strayed(Side.OVER, house.day("10 jan"), 72, Optional.of(Temperature.ofCelsius(9.6))),
                        BAND,
                        Optional.of(Temperature.ofCelsius(9.6))));
        assertThat(codes(cellar().logged("1 jan", "12 jan", 9.6), "12 jan")).doesNotContain("out-of-band");
    }

    @Test
    void onItsWayOutIsSaidOnce() {
        Winter house = tulip(cellar().logged("9 jan", "9 jan", 6)
                .logged("10 jan", "10 jan", 7)
                .logged("11 jan", "11 jan", 8)
                .logged("12 jan", "12 jan", 8.8));
        assertThat(codes(house, "12 jan")).containsExactly("leaving-band");
    }

    @Test
    void unreadForLongerThanIsBridgedIsSaidInsteadOfHowWarmItWas() {
        Winter house = tulip(cellar().logged("1 oct", "1 jan", 10));
        assertThat(codes(house, "7 jan")).containsExactly("out-of-band");
        assertThat(codes(house, "8 jan")).isEmpty();
        assertThat(codes(house, "11 jan")).isEmpty();
        assertThat(on(house, "12 jan"))
                .containsExactly(new Attention.Unread(house.placeId("cellar"), house.day("1 jan"), 11));
    }

    @Test
    void aRoomIsNotAskedToBeRead() {
        Winter house = Winter.winter()
                .withoutDailyCare()
                .place("sill", Sort.WARM_SILL)
                .logged("1 jan", "2 jan", 18)
                .pot("N1", "Linen Parade", "paperwhite")
                .potted("1 jan", "sill");
        assertThat(codes(house, "9 jan")).isEmpty();
    }

    @Test
    void hardFrostIsSaidUntilSomebodyLookedAfterTwoWeeks() {
        Winter house = tulip(cellar().logged("1 jan", "31 jan", 4).logged("10 jan", "10 jan", -4, 1));
        Attention frozen = new Attention.FrostThere(
                house.placeId("cellar"),
                1,
                Temperature.ofCelsius(-4),
                house.day("10 jan"),
                house.day("10 jan"),
                Optional.of(house.day("24 jan")));
        assertThat(on(house, "11 jan")).contains(frozen);
        assertThat(on(house, "30 jan")).contains(frozen);
        assertThat(house.on("11 jan").pot(house.id("T1")).concerns())
                .contains(new Concern.Frozen(
                        house.placeId("cellar"),
                        Temperature.ofCelsius(-4),
                        house.day("10 jan"),
                        house.day("10 jan"),
                        Optional.of(house.day("24 jan"))));
        house.checked("20 jan");
        assertThat(codes(house, "20 jan")).containsExactly("frozen");
        house.checked("24 jan");
        assertThat(codes(house, "24 jan")).isEmpty();
        assertThat(house.on("24 jan").pot(house.id("T1")).concerns())
                .extracting(Concern::code)
                .doesNotContain("frozen");
    }

    /** What is to be done goes by the last day of it, which need not be the coldest. */
    @Test
    void theColdestIsSaidWithItsOwnDayAndTheLastDayOfIt() {
        Winter house = tulip(cellar().logged("1 jan", "31 jan", 4)
                .logged("8 jan", "8 jan", -9.2, 1)
                .logged("9 jan", "9 jan", -9.2, 1)
                .logged("10 jan", "10 jan", -2.9, 1)
                .logged("11 jan", "11 jan", -1, 1));
        assertThat(frosts(house, "12 jan"))
                .containsExactly(new Attention.FrostThere(
                        house.placeId("cellar"),
                        1,
                        Temperature.ofCelsius(-9.2),
                        house.day("9 jan"),
                        house.day("10 jan"),
                        Optional.of(house.day("24 jan"))));
    }

    /** Noted at 0 C, acted on at -2 C (28 F). */
    @Test
    void slightFrostIsNotedForAWeek() {
        Winter house = tulip(cellar().logged("1 jan", "31 jan", 4).logged("10 jan", "10 jan", -1.9, 3));
        assertThat(codes(house, "16 jan")).containsExactly("frost");
        assertThat(codes(house, "17 jan")).isEmpty();
        house.logged("10 jan", "10 jan", -2, 3);
        assertThat(codes(house, "16 jan")).containsExactly("frozen");
        house.logged("10 jan", "10 jan", 0, 3);
        assertThat(codes(house, "16 jan")).isEmpty();
    }

    @Test
    void aPotThatCameAfterwardsWasNotFrozen() {
        Winter house = cellar().logged("1 jan", "31 jan", 4)
                .logged("10 jan", "10 jan", -4, 1)
                .pot("T1", "Marrow Lane", "tulip")
                .potted("12 jan", "cellar");
        assertThat(codes(house, "13 jan")).isEmpty();
        assertThat(house.on("13 jan").pot(house.id("T1")).concerns())
                .extracting(Concern::code)
                .doesNotContain("frozen");
    }

    @Test
    void onlyPotsThatStoodThereWhenItFrozeAreCounted() {
        Winter house = tulip(cellar().logged("1 jan", "31 jan", 4).logged("9 jan", "9 jan", -4, 1))
                .pot("T2", "Inkwell", "tulip")
                .potted("1 oct", "cellar")
                .pot("T3", "Inkwell", "tulip")
                .potted("10 jan", "cellar");
        assertThat(frosts(house, "12 jan"))
                .singleElement()
                .extracting(Attention.FrostThere::pots)
                .isEqualTo(2);
    }

    @Test
    void ofAHardFrostBeforeAPotCameAndASlightOneSinceItIsToldOfTheSlightOne() {
        Winter house = cellar().logged("1 jan", "31 jan", 4)
                .logged("5 jan", "5 jan", -4, 1)
                .logged("10 jan", "10 jan", -1, 3)
                .pot("T1", "Marrow Lane", "tulip")
                .potted("7 jan", "cellar");
        assertThat(frosts(house, "12 jan"))
                .containsExactly(new Attention.FrostThere(
                        house.placeId("cellar"),
                        1,
                        Temperature.ofCelsius(-1),
                        house.day("10 jan"),
                        house.day("10 jan"),
                        Optional.empty()));
        house.pot("T2", "Inkwell", "tulip").potted("1 oct", "cellar");
        assertThat(frosts(house, "12 jan"))
                .as("the hard one, and whom it met")
                .containsExactly(new Attention.FrostThere(
                        house.placeId("cellar"),
                        1,
                        Temperature.ofCelsius(-4),
                        house.day("5 jan"),
                        house.day("5 jan"),
                        Optional.of(house.day("19 jan"))));
    }

    private static List<Attention.FrostThere> frosts(Winter house, String day) {
        return on(house, day).stream()
                .filter(Attention.FrostThere.class::isInstance)
                .map(Attention.FrostThere.class::cast)
                .toList();
    }

    @Test
    void frostIsReadFromALowestToo() {
        Winter house = tulip(cellar().read("5 jan", "10 jan", -3, 4));
        assertThat(codes(house, "12 jan")).containsExactly("frozen");
        assertThat(codes(tulip(cellar().read("5 jan", "10 jan", -3, 4)).flowered("11 jan"), "12 jan"))
                .isEmpty();
    }

    @Test
    void aPlaceWithoutPotsIsOnTrialForAWeekAndItsVerdictStandsForOne() {
        Winter house = cellar().logged("1 sep", "20 sep", 5);
        assertThat(on(house, "5 sep"))
                .containsExactly(
                        new Attention.OnTrial(house.placeId("cellar"), new Trial(house.day("1 sep"), 5, 5), BAND));
        assertThat(codes(house, "14 sep")).containsExactly("trial");
        assertThat(codes(house, "15 sep")).isEmpty();
        assertThat(codes(tulip(cellar().logged("1 oct", "5 oct", 5)), "5 oct")).isEmpty();
    }

    @Test
    void thatNoDayOfATrialCountsIsSaidForNoLongerThanItsVerdict() {
        Winter house = cellar();
        for (int day = 1; day <= 20; day++) {
            house = house.loggedHours(day + " sep", 2.4, 5);
        }
        assertThat(on(house, "14 sep"))
                .containsExactly(
                        new Attention.OnTrial(house.placeId("cellar"), new Trial(house.day("1 sep"), 0, 0), BAND));
        assertThat(codes(house, "15 sep")).isEmpty();
    }

    @Test
    void aPlaceReadToBeColdIsColdWhateverItsDaysSay() {
        Winter house = tulip(cellar().cold("1 nov", "1 apr"));
        assertThat(codes(house.moved("2 nov", "cellar"), "2 apr")).containsExactly("not-cold");
        assertThat(codes(house.logged("20 mar", "2 apr", 5), "2 apr")).isEmpty();
    }

    @Test
    void aRoundIsMadeOnTheDayToLookForSoftness() {
        Winter house = tulip(cellar().every(20).logged("1 jan", "31 jan", 4).logged("10 jan", "10 jan", -4, 1));
        house.checked("8 jan");
        Job.Round round = house.on("12 jan").places().get(0).round().orElseThrow();
        assertThat(round.on()).isEqualTo(house.day("24 jan"));
        assertThat(round.asksForSoftness()).isTrue();
        assertThat(house.on("12 jan")
                        .why(house.on("12 jan").places().get(0).place())
                        .orElseThrow())
                .satisfies(why -> assertThat(why.recomputed()).isEqualTo(why.result()));
        house.checked("24 jan");
        Job.Round after = house.on("24 jan").places().get(0).round().orElseThrow();
        assertThat(after.on()).isEqualTo(house.day("13 feb"));
        assertThat(after.asksForSoftness()).isFalse();
    }

    @Test
    void aRoundThatComesBeforeDoesNotAskForItYet() {
        Winter house = tulip(cellar().every(10).logged("1 jan", "31 jan", 4).logged("10 jan", "10 jan", -4, 1));
        house.checked("8 jan");
        Job.Round round = house.on("12 jan").places().get(0).round().orElseThrow();
        assertThat(round.on()).isEqualTo(house.day("18 jan"));
        assertThat(round.asksForSoftness()).isFalse();
    }

    @Test
    void leftOutItIsNotAskedAgain() {
        Winter house = tulip(cellar().every(20).logged("1 jan", "31 jan", 4).logged("10 jan", "10 jan", -4, 1));
        house.checked("8 jan").roundLeftOut("24 jan", JobKind.CHECK);
        assertThat(house.on("25 jan").places().get(0).round().orElseThrow().on())
                .isEqualTo(house.day("13 feb"));
    }
}
