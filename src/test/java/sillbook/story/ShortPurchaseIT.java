// SPDX-License-Identifier: Apache-2.0
package sillbook.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** August: two parcels come, one of them short and not all sound, the other with another variety in it. */
@ExtendWith(NeedsTmux.class)
class ShortPurchaseIT {
    /** Most of them letters: what is typed is two counts and a name. */
    private static final int MOST_KEYS = 60;

    @TempDir
    private Path home;

    private Program program() {
        return new Program(home);
    }

    @BeforeEach
    void order() throws IOException, InterruptedException {
        program().write("ordered 10 Inkwell (hyacinth), 1 jul, from Harbour Seeds");
        program().write("ordered 30 Marrow Lane (tulip triumph), 2 jul, grade 12+, from Harbour Seeds");
    }

    @Test
    void whatCameIsCountedAndOnlySoundBulbsAreInHand() throws IOException, InterruptedException {
        try (Tmux terminal = program().open()) {
            terminal.waitFor("1 TODAY");
            CountedKeys hands = new CountedKeys(terminal);

            hands.press("4")
                    .waitFor("BULBS")
                    .press("v")
                    .waitFor("View")
                    .press("p")
                    .waitFor("purchases, 1-2 of 2");
            hands.press("Enter").waitFor("30 'Marrow Lane' ordered");
            hands.type("27 of 30").press("Tab").type("2 soft, 1 mould");
            hands.waitFor("3 short: 30 were ordered").waitFor("24 bulbs in hand");
            hands.press("Enter").waitFor("U takes it back");

            hands.press("End", "Enter").waitFor("10 'Inkwell' ordered");
            hands.press("Tab", "Tab", "Tab").type("Bramble Tax (hyacinth)").waitFor("sent instead of 'Inkwell'");
            hands.press("Enter").waitFor("U takes it back");

            assertThat(hands.told("an August purchase arriving short, another substituted"))
                    .isLessThanOrEqualTo(MOST_KEYS);
            Program.leave(terminal);
        }
        assertThat(program().run("bulbs"))
                .contains("27 of 30 bulbs, in hand")
                .contains("2 soft, 1 with mould: 24 to plant")
                .contains("10 bulbs, in hand; sent instead of 'Inkwell'");
        assertThat(program().run("write", "--dry-run", "5 x Marrow Lane x5, 15 cm"))
                .contains("25 bulbs wanted, 24 in hand: 1 is not in the book.");
    }
}
