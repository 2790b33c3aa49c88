// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sillbook.season.Winter.winter;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.handbook.FigureName;
import sillbook.handbook.Handbook;
import sillbook.model.DayRead;
import sillbook.model.DaysRead;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Place.Sort;

/** What the warmth of a room comes to; the rules themselves are checked in {@code reckon.heat}. */
class RoomWarmthTest {
    private final Winter house = winter().place("cellar", Sort.CELLAR)
            .place("sill", Sort.WARM_SILL)
            .usually(10, 16)
            .pot("T1", "Tuesday Coat", "tulip")
            .potted("1 oct", "cellar")
            .moved("14 jan", "sill");

    private static DayRead day(Winter told, LocalDate day, int low, int high) {
        int mean = (low + high) * 500;
        return new DayRead(told.placeId("sill"), day, 24, 24, 0, 0, 0, 0, mean, low * 1000, high * 1000);
    }

    private RoomWarmth warmth(String today, DayRead... days) {
        Journal journal = house.journal().with(DaysRead.of(List.of(days), List.of()));
        LocalDate on = house.day(today);
        return RoomWarmth.of(
                journal, Outlook.of(journal, Handbook.standard(), on).pot(house.id("T1")), on);
    }

    /** Ten days at 18 C; by a factor of 2.5, and from 2 to 3.2, for ten degrees. */
    @ParameterizedTest
    @CsvSource({"13, 15.81, 14.14, 17.89", "18, 10, 10, 10", "23, 6.32, 5.59, 7.07"})
    void aBloomLastsLongerWhereItIsCool(double celsius, double days, double least, double most) {
        var bloom = RoomWarmth.Lasting.of(house.placeId("sill"), celsius, true, 10);

        assertThat(bloom.days()).isCloseTo(days, within(0.01));
        assertThat(bloom.least()).isCloseTo(least, within(0.01));
        assertThat(bloom.most()).isCloseTo(most, within(0.01));
    }

    @Test
    void theRoomIsAsReadLastWeekElseAsUsual() {
        assertThat(warmth("20 jan").bloom()).hasValueSatisfying(bloom -> {
            assertThat(bloom.isRead()).isFalse();
            assertThat(bloom.celsius()).isEqualTo(13);
        });
        assertThat(warmth("20 jan", day(house, house.day("19 jan"), 16, 20), day(house, house.day("12 jan"), 0, 2))
                        .bloom())
                .hasValueSatisfying(bloom -> {
                    assertThat(bloom.isRead()).isTrue();
                    assertThat(bloom.celsius()).isEqualTo(18);
                });
    }

    @Test
    void inTheColdNothingIsSaid() {
        assertThat(warmth("10 jan").bloom()).isEmpty();
        assertThat(warmth("10 jan").soFar()).isEmpty();
        assertThat(warmth("20 jan").soFar()).isEmpty();
    }

    @Test
    void aRoomNobodyKnowsSaysNothing() {
        Winter told = winter().place("cellar", Sort.CELLAR)
                .place("sill", Sort.WARM_SILL)
                .pot("T1", "Tuesday Coat", "tulip")
                .potted("1 oct", "cellar")
                .moved("14 jan", "sill");
        LocalDate today = told.day("20 jan");

        assertThat(RoomWarmth.of(told.journal(), told.on("20 jan").pot(told.id("T1")), today))
                .isEqualTo(new RoomWarmth(Optional.empty(), Optional.empty()));
    }

    @Test
    void warmthAddsUpFromTheDayItCameIn() {
        // Above 4.4 C: 13.6 of a day at 18, and the same again; the day before it came in is left out.
        RoomWarmth warmth = warmth(
                "17 jan",
                day(house, house.day("13 jan"), 18, 18),
                day(house, house.day("14 jan"), 18, 18),
                day(house, house.day("16 jan"), 16, 20));

        assertThat(warmth.soFar()).hasValueSatisfying(soFar -> {
            assertThat(soFar.degreeDays()).isCloseTo(27.2, within(1e-6));
            assertThat(soFar.daysRead()).isEqualTo(2);
            assertThat(soFar.days()).isEqualTo(4);
        });
    }

    @Test
    void onlyOfTulipsABaseIsPublished() {
        Winter told = winter().place("cellar", Sort.CELLAR)
                .place("sill", Sort.WARM_SILL)
                .pot("H1", "Inkwell", "hyacinth")
                .potted("1 oct", "cellar")
                .moved("14 jan", "sill");
        Journal journal = told.journal().with(DaysRead.of(List.of(day(told, told.day("15 jan"), 18, 18)), List.of()));
        LocalDate today = told.day("17 jan");

        RoomWarmth warmth = RoomWarmth.of(
                journal, Outlook.of(journal, Handbook.standard(), today).pot(told.id("H1")), today);
        assertThat(warmth.soFar()).isEmpty();
        assertThat(warmth.bloom()).isPresent();
    }

    @Test
    void anOwnLengthStandsOverTheRule() {
        house.own(Kind.of("tulip"), FigureName.IN_BLOOM, 6, 8, 9);

        assertThat(warmth("20 jan").bloom()).isEmpty();
    }
}
