// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.today;

import org.junit.jupiter.api.Test;
import sillbook.model.Journal;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.GrowersWinter;

class TodayPageTest {
    private static final Journal JOURNAL = GrowersWinter.told().journal();

    @Test
    void looksAsKept() {
        Golden.check("today", Desk.over(JOURNAL).state());
    }
}
