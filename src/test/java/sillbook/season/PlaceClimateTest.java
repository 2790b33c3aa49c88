// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static java.time.ZoneOffset.UTC;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Band;
import sillbook.model.LastRead;
import sillbook.model.Place.Sort;
import sillbook.model.Temperature;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.PlaceClimate.Side;
import sillbook.season.PlaceClimate.SoFar;
import sillbook.season.PlaceClimate.Strayed;
import sillbook.season.PlaceClimate.Trial;

class PlaceClimateTest {
    private static Winter cellar() {
        return Winter.winter().place("cellar", Sort.CELLAR);
    }

    private static PlaceClimate on(Winter house, String day) {
        return PlaceClimate.of(house.journal(), house.placeId("cellar"), house.day(day));
    }

    @Test
    void ofAPlaceThatWasNeverReadOnlyTheBandIsKnown() {
        PlaceClimate climate = on(cellar(), "12 jan");
        assertThat(climate.isRead()).isFalse();
        assertThat(climate)
                .isEqualTo(new PlaceClimate(
                        Optional.of(Band.ofCelsius(2, 9)),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
    }

    @Test
    void theBandIsTheGrowersFirstAndARoomOfWhichNobodySaidHasNone() {
        assertThat(on(cellar().usually(4, 11), "12 jan").band()).contains(Band.ofCelsius(4, 11));
        Winter house = cellar().place("sill", Sort.WARM_SILL).logged("1 jan", "11 jan", 30);
        PlaceClimate sill = PlaceClimate.of(house.journal(), house.placeId("sill"), house.day("12 jan"));
        assertThat(sill.band()).isEmpty();
        assertThat(sill.strayed()).isEmpty();
        assertThat(sill.season().map(SoFar::daysOver)).contains(0);
    }

    @Test
    void outOfItsBandForSoManyHoursSinceTheFirstDayWhoseMeanIs() {
        Winter house = cellar().logged("1 dec", "9 jan", 8)
                .logged("10 jan", "11 jan", 9.6)
                .loggedHours("12 jan", 8, 9.6);
        PlaceClimate climate = on(house, "12 jan");
        assertThat(climate.strayed())
                .contains(new Strayed(Side.OVER, house.day("10 jan"), 56, Optional.of(Temperature.ofCelsius(9.6))));
        assertThat(climate.now().map(LastRead::temperature)).contains(Temperature.ofCelsius(9.6));
        assertThat(climate.week()).contains(Band.ofCelsius(8, 9.6));
        assertThat(climate.drift()).isEmpty();
        assertThat(climate.season().map(SoFar::daysOver)).contains(3);
    }

    @Test
    void whatWasReadLaterIsNotKnownYet() {
        Winter house = cellar().logged("1 dec", "9 jan", 8).logged("10 jan", "12 jan", 1);
        assertThat(on(house, "12 jan").strayed().map(Strayed::side)).contains(Side.UNDER);
        assertThat(on(house, "9 jan").strayed()).isEmpty();
        assertThat(on(house, "9 jan").now()).isEmpty();
        assertThat(on(house, "9 jan").lastDay()).contains(house.day("9 jan"));
        assertThat(on(house, "1 nov").isRead()).isFalse();
    }

    @Test
    void aSpanIsOutOfTheBandWhenAllOfItIs() {
        Winter house = cellar().read("1 jan", "8 jan", 3, 12);
        assertThat(on(house, "12 jan").strayed()).isEmpty();
        assertThat(on(house, "12 jan").week()).contains(Band.ofCelsius(3, 12));
        assertThat(on(house, "16 jan").week()).isEmpty();
        house.read("8 jan", "12 jan", 10, 12);
        assertThat(on(house, "12 jan").strayed())
                .contains(new Strayed(Side.OVER, house.day("8 jan"), 96, Optional.empty()));
        assertThat(on(house, "12 jan").lastDay()).contains(house.day("11 jan"));
    }

    @Test
    void aPlaceThatWarmsSaysWhenItWillBeOut() {
        Winter house = cellar().logged("5 jan", "5 jan", 6)
                .logged("6 jan", "6 jan", 6.5)
                .logged("7 jan", "7 jan", 7)
                .logged("8 jan", "8 jan", 7.5);
        PlaceClimate.Drift drift = on(house, "8 jan").drift().orElseThrow();
        assertThat(drift.side()).isEqualTo(Side.OVER);
        assertThat(drift.perDay()).isCloseTo(0.5, within(1e-9));
        assertThat(drift.on()).isEqualTo(house.day("12 jan"));
        assertThat(on(house, "7 jan").drift()).as("too few days").isEmpty();
    }

    @Test
    void aPlaceThatCoolsDoes() {
        Winter house =
                cellar().logged("5 jan", "6 jan", 5).logged("7 jan", "7 jan", 4).logged("8 jan", "8 jan", 3);
        assertThat(on(house, "8 jan").drift().map(PlaceClimate.Drift::side)).contains(Side.UNDER);
    }

    @Test
    void aSteadyPlaceOrOneFarFromItsEdgesDoesNot() {
        assertThat(on(cellar().logged("1 jan", "8 jan", 8.9), "8 jan").drift()).isEmpty();
        Winter house = cellar().logged("5 jan", "6 jan", 5)
                .logged("7 jan", "7 jan", 5.2)
                .logged("8 jan", "8 jan", 5.4);
        assertThat(on(house, "8 jan").drift()).isEmpty();
    }

    @Test
    void theHoursOfANightSayNothingOfTheDay() {
        Winter house = cellar().logged("1 jan", "7 jan", 1.9, 3).loggedHours("8 jan", 6, 1.9);
        assertThat(on(house, "8 jan").drift()).isEmpty();
        Winter partly = cellar().loggedHours("8 jan", 6, 1.5);
        assertThat(on(partly, "8 jan").strayed().map(Strayed::side)).contains(Side.UNDER);
    }

    @Test
    void theSeasonCountsWarmDaysFrostDaysAndGaps() {
        Winter house = cellar().logged("1 nov", "10 nov", 10)
                .logged("14 nov", "20 nov", -1, 6)
                .read("20 nov", "25 nov", 3, 5)
                .read("27 nov", "29 nov", -3, 5)
                .logged("30 nov", "30 nov", 1.5);
        SoFar season = on(house, "1 dec").season().orElseThrow();
        assertThat(season.since()).isEqualTo(house.day("1 nov"));
        assertThat(season.daysOver()).isEqualTo(10);
        assertThat(season.daysUnderZero()).isEqualTo(7 + 1);
        assertThat(season.daysUnder()).isEqualTo(1);
        assertThat(season.gaps())
                .containsExactly(
                        DaySpan.of(house.day("11 nov"), house.day("14 nov")),
                        DaySpan.of(house.day("25 nov"), house.day("27 nov")),
                        DaySpan.of(house.day("29 nov"), house.day("30 nov")));
        assertThat(season.share()).isCloseTo((30 - 6) / 30.0, within(1e-9));
    }

    @Test
    void ofTheFirstDayOnlyTheHoursKnownAreAskedFor() {
        Winter house = cellar().loggedHours("1 nov", 6, 5).logged("2 nov", "2 nov", 5);
        assertThat(on(house, "2 nov").season().map(SoFar::share)).contains(1.0);
        assertThat(on(house, "1 nov").season().map(SoFar::share)).contains(1.0);
        assertThat(on(house, "4 nov").season().map(SoFar::share)).contains(30.0 / 54);
    }

    @Test
    void daysOnEndAreATrialUntilItIsNoLongerRead() {
        Winter house =
                cellar().logged("1 sep", "2 sep", 5).logged("4 sep", "5 sep", 5).logged("6 sep", "7 sep", 10);
        assertThat(on(house, "7 sep").trial()).contains(new Trial(house.day("4 sep"), 4, 2));
        assertThat(on(house, "8 sep").trial()).isPresent();
        assertThat(on(house, "9 sep").trial()).isEmpty();
    }

    @Test
    void aTrialIsPassedBySevenDaysInTheBandWithoutFrost() {
        Winter house = cellar().logged("1 sep", "1 sep", 12).logged("2 sep", "7 sep", 1, 7);
        Trial six = on(house, "6 sep").trial().orElseThrow();
        assertThat(six.isOver()).isFalse();
        Trial seven = on(house, "7 sep").trial().orElseThrow();
        assertThat(seven).isEqualTo(new Trial(house.day("1 sep"), 7, 6));
        assertThat(seven.isOver()).isTrue();
        assertThat(seven.isPassed()).isFalse();
        house.logged("8 sep", "8 sep", 4);
        assertThat(on(house, "8 sep").trial().orElseThrow().isPassed()).isTrue();
        house.logged("8 sep", "8 sep", -1, 9);
        assertThat(on(house, "8 sep").trial().orElseThrow().isPassed()).isFalse();
    }

    @Test
    void aDayOfATrialCountsWhenItIsKnownForTheMostPart() {
        Winter house = cellar();
        for (int day = 1; day <= 7; day++) {
            house = house.loggedHours(day + " sep", 2.4, 5);
        }
        assertThat(on(house, "7 sep").trial()).contains(new Trial(house.day("1 sep"), 0, 0));
        house = house.logged("1 sep", "6 sep", 5).loggedHours("7 sep", 19.9, 5);
        assertThat(on(house, "7 sep").trial()).contains(new Trial(house.day("1 sep"), 6, 6));
        house = house.loggedHours("7 sep", 20, 5);
        assertThat(on(house, "7 sep").trial().orElseThrow().isPassed()).isTrue();
    }

    @Test
    void frostOfAnHourTellsAgainstATrial() {
        Winter house = cellar().logged("1 sep", "7 sep", 5).loggedHours("8 sep", 1, -1);
        assertThat(on(house, "8 sep").trial()).contains(new Trial(house.day("1 sep"), 8, 6));
    }

    @Test
    void aLoneReadingIsOfItsDayThoughNothingIsKnownOfThat() {
        Winter house = cellar().read("1 sep", "8 sep", 3, 8);
        PlaceClimate spanned = on(house, "8 sep");
        assertThat(spanned.lastReadOn(UTC)).contains(house.day("7 sep"));
        LastRead lone = new LastRead(
                house.placeId("cellar"), house.day("8 sep").atTime(9, 0).toInstant(UTC), Temperature.ofCelsius(5));
        assertThat(readLast(lone, spanned).lastReadOn(UTC)).contains(house.day("8 sep"));
        assertThat(readLast(lone, on(cellar(), "8 sep")).lastReadOn(UTC)).contains(house.day("8 sep"));
        assertThat(on(cellar(), "8 sep").lastReadOn(UTC)).isEmpty();
    }

    private static PlaceClimate readLast(LastRead last, PlaceClimate climate) {
        return new PlaceClimate(
                climate.band(),
                Optional.of(last),
                climate.lastDay(),
                climate.week(),
                climate.strayed(),
                climate.drift(),
                climate.season(),
                climate.trial());
    }

    @Test
    void aSpanPassesWhenAllOfItIsInTheBand() {
        assertThat(on(cellar().read("1 sep", "8 sep", 3, 8), "8 sep")
                        .trial()
                        .orElseThrow()
                        .isPassed())
                .isTrue();
        assertThat(on(cellar().read("1 sep", "8 sep", 3, 10), "8 sep")
                        .trial()
                        .orElseThrow()
                        .inBand())
                .isZero();
        assertThat(on(cellar().read("1 sep", "8 sep", 1, 8), "8 sep")
                        .trial()
                        .orElseThrow()
                        .inBand())
                .isZero();
    }
}
