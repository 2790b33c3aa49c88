// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.seasons;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import sillbook.model.Journal;
import sillbook.model.Settings;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Golden;

class WintersPageTest {
    private final Desk desk = Desk.over(PastWinters.journal()).press("6", "v", "s");

    private static String all(Desk desk) {
        return String.join("\n", desk.lines());
    }

    @Test
    void looksAsDrawn() {
        Golden.check("seasons-winters", desk.state());
    }

    @Test
    void eachWinterHasItsCountsAndTheOneUnderWayHasNoneYet() {
        assertThat(desk.line(4)).startsWith(" Season by season  4 winters, 13 pots: 8 well, 2 fair, 3 failed");
        assertThat(desk.line(6)).startsWith("▸   2023-24     4     3     1       .");
        assertThat(desk.line(8)).startsWith("    2025-26     5     3     .       2");
        assertThat(desk.line(9)).startsWith("    2026-27     1     .     .       .");
    }

    @Test
    void theFootAndTheCardSayTheRest() {
        assertThat(desk.line(22)).startsWith(" 2023-24  4 pots, 4 flowered; 3 well, 1 fair");
        assertThat(all(desk.press("Enter")))
                .contains(" Winter 2023-24")
                .contains("    4 pots, 4 flowered.")
                .contains("    3 well, 1 fair.")
                .contains("    Worst 'Goose Errand'.");
        assertThat(desk.press("Esc").line(4)).startsWith(" Season by season");
        assertThat(desk.press("Esc").line(4)).startsWith(" What did well");
    }

    @Test
    void anotherWinterIsOpenedByItsLine() {
        assertThat(all(desk.press("Down", "Down", "Enter"))).contains(" Winter 2025-26");
    }

    @Test
    void withoutAPotItSaysSo() {
        Desk empty = Desk.over(Journal.empty(Settings.initial(ZoneOffset.UTC))).press("6", "v", "s");
        assertThat(all(empty)).contains("Nothing was grown yet.");
        assertThat(empty.press("Enter").line(22)).contains("nothing was grown yet");
    }
}
