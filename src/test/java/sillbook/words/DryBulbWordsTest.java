// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import org.junit.jupiter.api.Test;
import sillbook.handbook.FigureName;
import sillbook.handbook.Handbook;
import sillbook.model.Kind;
import sillbook.model.Place.Sort;
import sillbook.season.Outlook;
import sillbook.season.Winter;

/**
 * Of 15 weeks 10 may be had dry, with 5 in the pot to follow (Oklahoma State University, HortScience 29, 1994): published of tulips, and
 * taken for granted of other kinds.
 */
class DryBulbWordsTest {
    private final Winter house = winter().place("fridge", Sort.FRIDGE).place("sill", Sort.WARM_SILL);

    private String howLong(String today) {
        Outlook outlook = house.on(today);
        DryBulbWords words = new DryBulbWords(house.journal(), Handbook.standard(), outlook.figures());
        return words.howLong(
                house.on(today).places().stream()
                        .flatMap(place -> place.waiting().stream())
                        .findFirst()
                        .orElseThrow(),
                outlook.day());
    }

    @Test
    void beforeNineWeeksItSaysWhatCounts() {
        house.pot("T1", "Tuesday Coat", "tulip").bought("1 sep", "fridge");

        assertThat(howLong("22 sep"))
                .isEqualTo(
                        "3 weeks of dry cold; at most ▫10 weeks count, and ▫5 weeks in the pot have to follow, for the roots.");
    }

    @Test
    void fromNineWeeksOnItSaysByWhichDayToPotThem() {
        house.pot("T1", "Tuesday Coat", "tulip").bought("1 sep", "fridge");

        assertThat(howLong("5 nov")).endsWith("for the roots. Pot them by Tue 10 Nov.");
        assertThat(howLong("12 nov")).endsWith("for the roots. Pot them now.");
    }

    @Test
    void ofOtherKindsItIsTakenForGranted() {
        house.pot("H1", "Inkwell", "hyacinth").bought("1 sep", "sill");

        assertThat(howLong("22 sep"))
                .isEqualTo(
                        "No dry cold so far; at most ?10 weeks count, and ?5 weeks in the pot have to follow, for the roots.");
    }

    @Test
    void aFigureOfOnesOwnIsMarkedSo() {
        house.pot("H1", "Inkwell", "hyacinth").bought("1 sep", "sill");
        house.own(Kind.of("hyacinth"), FigureName.DRY_COLD, 6, 7, 8);

        assertThat(howLong("22 sep")).contains("at most ▪7 weeks count");
    }

    @Test
    void whatNeedsNoColdHasNothingToSay() {
        house.pot("P1", "Linen Parade", "paperwhite").bought("1 sep", "fridge");

        assertThat(howLong("22 sep")).isEmpty();
    }

    @Test
    void theyAreKeptAiryFeltAndApartFromFoodAndFruit() {
        Outlook outlook = house.on("1 sep");

        assertThat(new DryBulbWords(house.journal(), Handbook.standard(), outlook.figures()).keeping())
                .hasSize(4)
                .anyMatch(text -> text.contains("not in closed plastic"))
                .anyMatch(text -> text.contains("once a week"))
                .anyMatch(text -> text.contains("nobody eats them"))
                .anyMatch(text -> text.contains("ripening fruit"));
    }
}
