// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.today;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import org.junit.jupiter.api.Test;
import sillbook.model.Journal;
import sillbook.model.Place.Sort;
import sillbook.season.Winter;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.GrowersWinter;

class TodayPageTest {
    private static final Journal JOURNAL = GrowersWinter.told().journal();

    @Test
    void looksAsKept() {
        Golden.check("today", Desk.over(JOURNAL).state());
    }

    /** The porch is the second place, and what is said of it is longer than the line. */
    @Test
    void theGravestOfAPlaceIsInSightHoweverLongAndIsExplained() {
        Winter told = winter().of(2026)
                .place("cellar", Sort.CELLAR)
                .pot("T3", "Ninepenny Hat", "tulip")
                .potted("24 sep", "cellar")
                .place("porch", Sort.PORCH)
                .logged("1 jan", "11 jan", 4)
                .logged("2 jan", "2 jan", -9.2, 1)
                .logged("8 jan", "8 jan", -2.9, 1)
                .pot("T4", "Ninepenny Hat", "tulip")
                .potted("24 sep", "porch");
        Desk desk = Desk.over(told.journal());

        assertThat(desk.lines())
                .anyMatch(line -> line.contains("Places    ❆ porch froze to -9.2 C on 2 Jan, last on 8 Jan")
                        && line.contains("and 1 more"));
        assertThat(desk.press("End", "W").lines())
                .anyMatch(line -> line.contains("Why froze to -9.2 C on 2 Jan, last on 8 Jan"));
    }

    /** Not there by its day, but by the day it would have had, had the cellar been as cold as it is taken to be. */
    @Test
    void whatIsHeldBackSaysSoInItsOneRow() {
        Winter told = winter().of(2026)
                .place("cellar", Sort.CELLAR)
                .logged("24 sep", "11 jan", 9.6)
                .pot("T3", "Ninepenny Hat", "tulip")
                .potted("24 sep", "cellar");

        Golden.check("today-held-back", Desk.over(told.journal()).state());
    }
}
