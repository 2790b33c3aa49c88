// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.pots;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import sillbook.model.Journal;
import sillbook.model.Settings;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.GrowersWinter;

class PotsPageTest {
    private final Desk desk = Desk.over(GrowersWinter.told().journal()).press("2");

    @Test
    void looksAsDrawn() {
        Golden.check("pots", desk.state());
    }

    @Test
    void anEmptySeasonSaysWhatBelongsHere() {
        Desk empty = Desk.over(Journal.empty(Settings.initial(ZoneOffset.UTC))).press("2");

        Golden.check("pots-none", empty.state());
    }

    @Test
    void theOrderIsChosenByLetter() {
        assertThat(desk.line(21)).contains("by next move");

        desk.press("v", "l");

        assertThat(desk.line(21)).contains("by label");
        assertThat(desk.line(4)).contains("A1");
    }

    @Test
    void everyOrderListsEveryPot() {
        int pots =
                desk.state().almanac().lines(desk.state().timescale().season()).size();
        for (String letter : new String[] {"n", "p", "k", "l", "b"}) {
            assertThat(desk.press("v", letter).line(21)).contains(" of " + pots);
        }
    }

    @Test
    void picksStayAndAreDrawn() {
        desk.press("Space");
        assertThat(desk.line(4)).startsWith("▸+");
        desk.press("Space");
        assertThat(desk.state().picked()).isEmpty();
    }

    @Test
    void theRulerPansAndZooms() {
        String before = desk.line(2);

        assertThat(desk.press("z").line(2)).isNotEqualTo(before);
        assertThat(desk.press("Right").line(2))
                .isNotEqualTo(desk.press("Left", "Left").line(2));
    }

    @Test
    void anotherSeasonHasItsOwnPots() {
        assertThat(desk.press("<").lines().get(2)).contains("season 2025-26");
        assertThat(String.join(" ", desk.lines())).contains("No pots in season 2025-26 yet.");
    }

    @Test
    void enterOpensTheCard() {
        desk.press("Enter");

        assertThat(desk.line(6)).startsWith(" Ahead");
        desk.press("Esc");
        assertThat(desk.line(21)).contains("by next move");
    }
}
