// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.why;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import sillbook.season.Why;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.GrowersWinter;

class WhySlipTest {
    private final Desk desk = Desk.over(GrowersWinter.told().journal()).press("w");

    private WhySlip slip() {
        return (WhySlip) desk.state().top();
    }

    @Test
    void looksAsDrawn() {
        Golden.check("why", desk.state());
    }

    @Test
    void walksAllFiguresOfTheLineAndComesBack() {
        int figures = slip().whys().size();
        for (int i = 0; i < figures; i++) {
            assertThat(desk.line(21)).contains((i + 1) + " of " + figures);
            desk.press("Right");
        }
        assertThat(slip().at()).isZero();
        assertThat(desk.press("Left").line(21)).contains(figures + " of " + figures);
    }

    @Test
    void everyFigureShownIsWorkedOutAgainFromItsOwnInputs() {
        for (Why<?> why : slip().whys()) {
            assertThat(why.recomputed()).isEqualTo(why.result());
        }
    }
}
