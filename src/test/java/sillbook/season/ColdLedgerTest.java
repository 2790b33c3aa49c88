// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import sillbook.model.Place.Sort;
import sillbook.season.ColdPart.Basis;
import sillbook.season.Winter.Look;

class ColdLedgerTest {
    private static Winter cellar() {
        return Winter.winter().place("cellar", Sort.CELLAR);
    }

    private static Winter tulip(Winter house) {
        return house.place("sill", Sort.WARM_SILL)
                .pot("T1", "Marrow Lane", "tulip")
                .potted("1 oct", "cellar");
    }

    private static ColdTime on(Winter house, String day) {
        return house.on(day).pot(house.id("T1")).life().cold();
    }

    private static ColdCount count(Winter house, String day) {
        return on(house, day).count();
    }

    private static Map<Basis, ColdPart> parts(Winter house, String day) {
        Outlook outlook = house.on(day);
        return outlook.whys(house.id("T1")).stream()
                .filter(Why.ColdSoFar.class::isInstance)
                .map(Why.ColdSoFar.class::cast)
                .flatMap(why -> why.stretches().stream())
                .flatMap(stretch -> stretch.parts().stream())
                .collect(Collectors.toMap(ColdPart::basis, part -> part));
    }

    private static void assertCount(ColdCount count, double least, double likely, double most) {
        assertThat(List.of(count.least(), count.likely(), count.most()))
                .zipSatisfy(
                        List.of(least, likely, most),
                        (is, should) -> assertThat(is).isCloseTo(should, within(1e-9)));
    }

    @Test
    void nothingReadIsAllAssumedByTheCalendar() {
        ColdTime cold = on(tulip(cellar()), "15 oct");
        assertThat(cold)
                .extracting(ColdTime::began, ColdTime::count, ColdTime::reached, ColdTime::dryDays)
                .containsExactly(
                        Optional.of(LocalDate.of(2026, 10, 1)), ColdCount.assumed(14, 14), List.of(), Optional.empty());
        assertThat(cold.count().isRead()).isFalse();
        assertThat(cold.count().assumed()).isEqualTo(14);
    }

    /** Twelve weeks at 5 C are twelve weeks (check value 1-7 of the weight's own tests). */
    @Test
    void aDayInTheBandCountsWhole() {
        ColdCount count = count(tulip(cellar().logged("1 oct", "23 dec", 5)), "24 dec");
        assertCount(count, 84, 84, 84);
        assertThat(count.daysColdEnough()).isEqualTo(84);
        assertThat(count.read()).isEqualTo(84);
        assertThat(count.assumed()).isZero();
    }

    /** In Berlin 25 October 2026 has 25 hours, and 28 March 2027 has 23. */
    @Test
    void aDayOnWhichTheClocksChangeIsADay() {
        Winter autumn = tulip(cellar().in("Europe/Berlin")
                .logged("1 oct", "24 oct", 5)
                .loggedHours("25 oct", 25, 5)
                .logged("26 oct", "30 oct", 5));
        assertCount(count(autumn, "31 oct"), 30, 30, 30);
        assertThat(PlaceClimate.of(autumn.journal(), autumn.placeId("cellar"), autumn.day("31 oct"))
                        .season()
                        .orElseThrow()
                        .share())
                .isCloseTo(1, within(1e-9));
        Winter spring = tulip(cellar().in("Europe/Berlin")
                .logged("1 oct", "29 mar", 5)
                .loggedHours("25 oct", 25, 5)
                .loggedHours("28 mar", 23, 5));
        assertCount(count(spring, "30 mar"), 180, 180, 180);
        assertThat(count(spring, "30 mar").unaccounted()).isZero();
    }

    @Test
    void whatIsWarmerCountsInPartAndAboveThirteenNothing() {
        ColdCount count = count(tulip(cellar().logged("1 oct", "10 oct", 10).logged("11 oct", "14 oct", 15)), "15 oct");
        assertCount(count, 7.5, 7.5, 7.5);
        assertThat(count.daysColdEnough()).isEqualTo(7);
    }

    @Test
    void fromZeroToTwoCountsInPartUntilItIsTakenToBeRooted() {
        Winter house = tulip(cellar().logged("1 oct", "30 oct", 1));
        assertCount(count(house, "15 oct"), 7, 7, 14);
        assertCount(count(house, "31 oct"), 15, 7 + 16, 30);
    }

    @Test
    void rootsThatWereSeenSaySinceWhen() {
        Winter house = tulip(cellar().logged("1 oct", "30 oct", 1)).saw("6 oct", Look.roots());
        assertThat(count(house, "31 oct").likely()).isCloseTo(2.5 + 25, within(1e-9));
    }

    @Test
    void whoLookedAndFoundNoneHasNotRooted() {
        Winter house = tulip(cellar().logged("1 oct", "30 oct", 1)).saw("28 oct", Look.noRoots());
        assertThat(count(house, "31 oct").likely()).isCloseTo(15, within(1e-9));
    }

    @Test
    void aLowestAndAHighestBoundWhatCountsAndInTheBandItAllDoes() {
        assertCount(count(tulip(cellar().read("1 oct", "11 oct", 3, 8)), "11 oct"), 10, 10, 10);
        assertCount(count(tulip(cellar().read("1 oct", "11 oct", 3, 11)), "11 oct"), 5, 10, 10);
        assertCount(count(tulip(cellar().read("1 oct", "11 oct", 9, 12)), "11 oct"), 2.5, 6.25, 10);
        assertCount(count(tulip(cellar().read("1 oct", "11 oct", 14, 20)), "11 oct"), 0, 0, 0);
        assertThat(parts(tulip(cellar().read("1 oct", "11 oct", 3, 11)), "11 oct"))
                .containsOnlyKeys(Basis.BETWEEN);
    }

    @Test
    void aSumGoesBeforeASpanAndASpanBeforeTheCalendar() {
        Winter house = tulip(cellar().read("1 oct", "11 oct", 14, 20).logged("1 oct", "5 oct", 5));
        assertThat(parts(house, "21 oct"))
                .containsEntry(Basis.READ, new ColdPart(Basis.READ, 5, 5, 5, 5))
                .containsEntry(Basis.BETWEEN, new ColdPart(Basis.BETWEEN, 5, 0, 0, 0))
                .containsEntry(Basis.ASSUMED, new ColdPart(Basis.ASSUMED, 10, 10, 10, 10));
    }

    @Test
    void ofSpansThatOverlapTheOneThatBeganFirstHolds() {
        Winter house = tulip(cellar().read("6 oct", "16 oct", 14, 20)
                .read("1 oct", "11 oct", 3, 8)
                .read("2 oct", "9 oct", 15, 16));
        assertCount(count(house, "16 oct"), 10, 10, 10);
    }

    @Test
    void betweenTwoReadingsAGapIsNotAccountedForAndTakenForGranted() {
        Winter house = tulip(
                cellar().logged("1 oct", "5 oct", 5).loggedHours("6 oct", 6, 5).logged("11 oct", "14 oct", 5));
        ColdCount count = count(house, "20 oct");
        assertThat(count.read()).isCloseTo(9.25, within(1e-9));
        assertThat(count.unaccounted()).isCloseTo(4.75, within(1e-9));
        assertThat(count.assumed()).isCloseTo(5, within(1e-9));
        assertCount(count, 14.25, 19, 19);
    }

    @Test
    void aGapOnDaysThatAreNotColdThereCountsNothing() {
        Winter house = tulip(
                cellar().cold("12 oct", "1 apr").logged("1 oct", "5 oct", 5).logged("14 oct", "14 oct", 5));
        assertThat(count(house, "15 oct").likely()).isCloseTo(5 + 2 + 1, within(1e-9));
    }

    @Test
    void theColdBeginsWhenThePlaceIsCold() {
        Winter house = tulip(cellar().logged("8 oct", "14 oct", 15).logged("15 oct", "20 oct", 10));
        ColdTime cold = on(house, "21 oct");
        assertThat(cold.began()).contains(house.day("15 oct"));
        assertThat(cold.daysIn()).isEqualTo(20);
        assertCount(cold.count(), 4.5, 4.5, 4.5);
        assertThat(on(house, "15 oct").began()).isEmpty();
    }

    @Test
    void daysBeforeTheFirstReadingCountWhereItWasColdByThen() {
        assertThat(count(tulip(cellar().logged("8 oct", "14 oct", 5)), "15 oct").daysColdEnough())
                .isEqualTo(14);
        assertThat(count(tulip(cellar().read("8 oct", "15 oct", 12, 16)), "15 oct")
                        .daysColdEnough())
                .isZero();
    }

    @Test
    void onlyWhatWasReadWhileItStoodThereCounts() {
        Winter house = tulip(cellar().logged("1 sep", "5 oct", 5).logged("6 oct", "20 oct", 15))
                .moved("6 oct", "sill");
        assertThat(count(house, "21 oct")).isEqualTo(new ColdCount(5, 5, 5, 5, 5, 0));
        assertThat(on(tulip(cellar().logged("1 jul", "30 sep", 15)), "5 oct").count())
                .isEqualTo(ColdCount.assumed(4, 4));
    }

    @Test
    void dryBulbsAreCountedTheSame() {
        Winter house = Winter.winter()
                .place("fridge", Sort.FRIDGE)
                .logged("1 sep", "10 sep", 11)
                .pot("T1", "Marrow Lane", "tulip")
                .bought("1 sep", "fridge");
        assertThat(house.on("11 sep")
                        .dryOf(house.journal()
                                .pots()
                                .get(house.id("T1"))
                                .first()
                                .variety()))
                .extracting(bulbs -> bulbs.dry().days())
                .containsExactly(5);
    }
}
