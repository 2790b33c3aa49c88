// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.today;

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
