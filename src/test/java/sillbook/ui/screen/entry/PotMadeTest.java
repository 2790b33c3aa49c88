// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.entry;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.GrowersWinter;

/** Beside the blanks of a new pot it is drawn how its bulbs will sit. */
class PotMadeTest {
    private final Desk desk = Desk.over(GrowersWinter.told().journal());

    private Desk made(int bulbs) {
        for (String line :
                new String[] {"container broad pan, pan, 15 cm", "bought 20 Chalk Lane (tulip), grade 12+"}) {
            desk.press("l").type(line).press("Enter").kept();
        }
        return desk.press("2", "n")
                .type("Chalk Lane")
                .press("Tab")
                .type(Integer.toString(bulbs))
                .press("Tab")
                .type("broad pan")
                .press("Tab");
    }

    @Test
    void howManyWouldFitStandsUnderIt() {
        assertThat(made(6).line(4)).endsWith(" from above, to scale");
        assertThat(desk.line(13))
                .startsWith("  Usual way  ____")
                .endsWith("_  " + " ".repeat(14) + "room for 5 airy, 8 packed");
        assertThat(desk.line(14)).as("the blank beside it is whole").endsWith(" " + "_".repeat(50));
    }

    @Test
    void tooManyAreMarked() {
        assertThat(made(9).line(13)).endsWith(" ! 9 bulbs, 8 fit packed");
    }
}
