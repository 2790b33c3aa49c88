// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static sillbook.season.Winter.winter;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.model.Place.Sort;
import sillbook.reckon.dates.DayCount;

/**
 * Weeks in the cold before potting, at the place the bulbs wait at. They count one for one (New Mexico State University
 * 2005: 3 weeks dry in a refrigerator take 3 off), 10 of 15 at most (Oklahoma State University, HortScience 29(5):487d,
 * 1994), and roots need the rest.
 */
class DryColdTest {
    private final Winter house = winter().place("fridge", Sort.FRIDGE)
            .place("step", Sort.COLD_FRAME)
            .cold("15 oct", "1 apr")
            .place("shed", Sort.COOL_ROOM)
            .pot("T1", "Tuesday Coat", "tulip");

    private ColdNeed need(String today) {
        return house.on(today).pot(house.id("T1")).coldNeed().orElseThrow();
    }

    @Test
    void bulbsThatWaitWhereItIsColdAreCooledFromTheDayTheyCame() {
        house.bought("1 sep", "fridge");

        assertThat(need("1 sep").credited()).isZero();
        assertThat(need("22 sep").credited()).isEqualTo(21);
        assertThat(house.on("22 sep").pot(house.id("T1")).life().cold().dryDays())
                .contains(21);
    }

    @Test
    void theirPottingEndsIt() {
        house.bought("1 sep", "fridge").potted("22 sep", "fridge");

        assertThat(need("1 nov").credited()).isEqualTo(21);
        assertThat(need("1 nov").potted()).isEqualTo(DayCount.ofWeeks(9, 12, 14));
        assertThat(house.on("1 nov").pot(house.id("T1")).useBy())
                .contains(house.day("22 sep").plusWeeks(14));
    }

    @ParameterizedTest
    @CsvSource({"10 nov, 70", "11 nov, 70", "1 dec, 70"})
    void noMoreThanTenWeeksCount(String potted, int credited) {
        house.bought("1 sep", "fridge").potted(potted, "fridge");

        assertThat(need("2 dec").credited()).isEqualTo(credited);
        assertThat(need("2 dec").potted().typical()).isEqualTo(35);
    }

    @Test
    void onlyTheColdDaysOfTheirPlaceCount() {
        house.bought("1 oct", "step");

        assertThat(need("15 oct").credited()).isZero();
        assertThat(need("25 oct").credited()).isEqualTo(10);
    }

    @Test
    void aRoomIsNoColdPlaceAndNoPlaceIsNone() {
        house.bought("1 sep", "shed");
        assertThat(need("1 nov").credited()).isZero();
        house.ordered();
        assertThat(need("1 nov").credited()).isZero();
    }

    @Test
    void whatIsOnlyOrderedDoesNotStandAnywhereYet() {
        house.ordered("1 sep", "fridge");

        assertThat(need("1 nov").credited()).isZero();
    }

    @Test
    void whatComesLaterThanItIsPottedHasHadNone() {
        house.bought("1 nov", "fridge").potted("1 oct", "fridge");

        assertThat(need("1 dec").credited()).isZero();
    }

    @Test
    void theReasonsTellWhatIsTakenForGranted() {
        house.bought("1 sep", "fridge").potted("22 sep", "fridge");
        Why.ColdNeeded why = house.on("1 nov").whys(house.id("T1")).stream()
                .filter(Why.ColdNeeded.class::isInstance)
                .map(Why.ColdNeeded.class::cast)
                .findFirst()
                .orElseThrow();

        assertThat(why.shares()).extracting(Prospect.Share::dry).containsExactly(new DryCold(Optional.empty(), 21));
        assertThat(why.recomputed()).isEqualTo(why.result());
    }

    @Test
    void bothPartsAddUp() {
        assertThat(new DryCold(Optional.of(42), 21).days()).isEqualTo(63);
        assertThat(DryCold.UNKNOWN.isKnown()).isFalse();
        assertThat(new DryCold(Optional.of(0), 0).isKnown()).isTrue();
        assertThatIllegalArgumentException().isThrownBy(() -> new DryCold(Optional.of(-1), 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new DryCold(Optional.empty(), -1));
    }
}
