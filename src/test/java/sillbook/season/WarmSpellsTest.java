// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.model.Place.Sort;
import sillbook.model.Temperature;
import sillbook.reckon.dates.DaySpan;

/** More than a day above 13 C; a steady change from 10 to 16 C is half a day of it. */
class WarmSpellsTest {
    private static final Temperature BOUND = Temperature.ofCelsius(13);

    private static Winter cellar() {
        return Winter.winter().place("cellar", Sort.CELLAR);
    }

    private static Winter cold() {
        return cellar().logged("1 oct", "31 dec", 5);
    }

    private static Winter tulip(Winter house) {
        return house.pot("T1", "Marrow Lane", "tulip").potted("1 oct", "cellar");
    }

    private static List<Concern.WarmSpell> spells(Winter house, String day) {
        return house.on(day).pot(house.id("T1")).concerns().stream()
                .filter(Concern.WarmSpell.class::isInstance)
                .map(Concern.WarmSpell.class::cast)
                .toList();
    }

    private static Concern.WarmSpell spell(Winter house, String from, String to, double highest) {
        return new Concern.WarmSpell(
                house.placeId("cellar"),
                DaySpan.ofInclusive(house.day(from), house.day(to)),
                BOUND,
                Temperature.ofCelsius(highest));
    }

    @Test
    void aSpellIsSaidWithItsDaysAndItsWarmest() {
        Winter house = tulip(cold().logged("12 dec", "15 dec", 13.5, 14.8));
        assertThat(spells(house, "1 jan")).containsExactly(spell(house, "12 dec", "15 dec", 14.8));
    }

    @Test
    void itsDaysDoNotCountAndNoneBeforeThemIsTakenOff() {
        Winter warm = tulip(cold().logged("12 dec", "15 dec", 14));
        Winter without = tulip(cold());
        ColdTime had = warm.on("1 jan").pot(warm.id("T1")).life().cold();
        assertThat(had.daysColdEnough())
                .isEqualTo(
                        without.on("1 jan").pot(without.id("T1")).life().cold().daysColdEnough() - 4);
    }

    /** Of 11 December, 12 December and 13 December the lowest and highest, the change between them even. */
    @ParameterizedTest
    @CsvSource({
        "14, 14, 5, 5, 5, 5, ",
        "14, 14, 14, 14, 5, 5, 11 to 12",
        "14, 14, 10, 13.1, 5, 5, 11 to 12",
        "14, 14, 10, 13, 5, 5, ",
        "13, 13, 13, 13, 13, 13, ",
        "10, 16, 10, 16, 5, 5, ",
        "10, 16, 10, 16.5, 5, 5, 11 to 12",
        "12, 14, 12, 14, 12, 14, ",
        "10, 16, 14, 14, 10, 16, 11 to 13",
        "14, 14, 10, 16, 14, 14, 11 to 12",
        "10, 16, 10, 16, 14, 14, 12 to 13"
    })
    void daysJoinWhereWarmHoursCan(
            double low11, double high11, double low12, double high12, double low13, double high13, String days) {
        Winter house = tulip(cold().logged("11 dec", "11 dec", low11, high11)
                .logged("12 dec", "12 dec", low12, high12)
                .logged("13 dec", "13 dec", low13, high13));
        assertThat(spells(house, "1 jan"))
                .extracting(WarmSpellsTest::days)
                .isEqualTo(days == null ? List.of() : List.of(days));
    }

    private static String days(Concern.WarmSpell spell) {
        return spell.days().start().getDayOfMonth() + " to "
                + spell.days().endExclusive().minusDays(1).getDayOfMonth();
    }

    @Test
    void aDayKnownInPartEndsASpellAndAnUnknownOneBreaksIt() {
        Winter house = tulip(cellar().logged("1 oct", "10 dec", 5)
                .loggedHours("11 dec", 10, 14)
                .loggedHours("12 dec", 10, 14)
                .loggedHours("13 dec", 10, 14));
        assertThat(spells(house, "1 jan")).as("20 hours, and 20 hours").isEmpty();
        house.logged("14 dec", "14 dec", 14);
        assertThat(spells(house, "1 jan")).containsExactly(spell(house, "13 dec", "14 dec", 14));
        house.logged("16 dec", "18 dec", 15);
        assertThat(spells(house, "1 jan")).containsExactly(spell(house, "16 dec", "18 dec", 15));
    }

    @Test
    void theLongestIsSaid() {
        Winter house = tulip(cold().logged("11 oct", "13 oct", 14).logged("20 nov", "21 nov", 19));
        assertThat(spells(house, "1 jan")).containsExactly(spell(house, "11 oct", "13 oct", 14));
    }

    /** A span of days counts when its lowest is above the bound; of a single one nobody knows that it was more than a day. */
    @ParameterizedTest
    @CsvSource({"12 dec, 13.1, true", "12 dec, 13, false", "11 dec, 15, false"})
    void aSpanWhoseLowestIsTooWarm(String to, double low, boolean isSaid) {
        Winter house = tulip(cellar().read("10 oct", "10 dec", 3, 6).read("10 dec", to, low, 16));
        assertThat(spells(house, "1 jan"))
                .isEqualTo(isSaid ? List.of(spell(house, "10 dec", "11 dec", 16)) : List.of());
    }

    @Test
    void aSpanJoinsTheDaysThatWereRead() {
        Winter house = tulip(cold().read("1 jan", "3 jan", 13.5, 15).logged("31 dec", "31 dec", 10, 16));
        assertThat(spells(house, "12 jan")).containsExactly(spell(house, "31 dec", "2 jan", 16));
    }

    @Test
    void onlyWhatThePotStoodThroughCounts() {
        Winter before = cold().logged("11 oct", "13 oct", 14)
                .place("fridge", Sort.FRIDGE)
                .logged("1 oct", "31 dec", 5)
                .pot("T1", "Marrow Lane", "tulip")
                .potted("1 oct", "fridge")
                .moved("13 oct", "cellar");
        assertThat(spells(before, "1 jan")).as("one day of three").isEmpty();
        before.moved("12 oct", "cellar");
        assertThat(spells(before, "1 jan")).containsExactly(spell(before, "12 oct", "13 oct", 14));
        Winter after = tulip(cold().logged("20 dec", "31 dec", 14).place("stair", Sort.COOL_ROOM))
                .moved("20 dec", "stair");
        assertThat(spells(after, "1 jan")).isEmpty();
    }

    @Test
    void itsColdBeginsWithTheFirstColdDay() {
        Winter house = tulip(cellar().logged("1 oct", "12 oct", 15).logged("13 oct", "31 dec", 5));
        assertThat(spells(house, "1 jan")).isEmpty();
        house.logged("20 oct", "21 oct", 14);
        assertThat(spells(house, "1 jan")).containsExactly(spell(house, "20 oct", "21 oct", 14));
    }

    @Test
    void itIsSaidUntilItFlowers() {
        Winter house = tulip(cold().logged("11 oct", "13 oct", 14).place("stair", Sort.COOL_ROOM))
                .moved("20 jan", "stair");
        assertThat(spells(house, "1 feb")).hasSize(1);
        house.flowered("10 feb");
        assertThat(spells(house, "11 feb")).isEmpty();
    }

    @Test
    void nothingIsSaidWithoutReadingsOrOfAKindWithoutCold() {
        assertThat(spells(tulip(cellar()), "1 jan")).isEmpty();
        Winter house = cold().logged("11 dec", "13 dec", 14)
                .pot("T1", "Linen Parade", "paperwhite")
                .potted("1 oct", "cellar");
        assertThat(spells(house, "1 jan")).isEmpty();
    }

    /** Clocks go forward on 28 March 2027: that day has 23 hours. */
    @Test
    void aDayIsAsLongAsTheClockMakesIt() {
        Winter house = tulip(cellar().in("Europe/Berlin").logged("1 oct", "31 mar", 5))
                .logged("27 mar", "27 mar", 10, 16)
                .loggedHours("28 mar", 23, 14)
                .logged("29 mar", "29 mar", 10, 16);
        LocalDate first = house.day("27 mar");
        assertThat(spells(house, "31 mar"))
                .singleElement()
                .extracting(Concern.WarmSpell::days)
                .isEqualTo(DaySpan.ofInclusive(first, first.plusDays(2)));
    }
}
