// SPDX-License-Identifier: Apache-2.0
package sillbook.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The three sittings a book is kept by, with dirty hands: each is a few keys, letters counted. */
@ExtendWith(NeedsTmux.class)
class GrowersDayIT {
    private static final int POTTING_DAY_KEYS = 60;
    private static final int ROUND_KEYS = 15;
    private static final int EVENING_KEYS = 25;

    @TempDir
    private Path home;

    private Program program() {
        return new Program(home);
    }

    @BeforeEach
    void house() throws IOException, InterruptedException {
        program()
                .write(
                        "place cellar, cellar, room 40",
                        "place stair window, cool room",
                        "place kitchen sill, warm sill");
        program()
                .write(
                        "variety Marrow Lane, tulip triumph",
                        "variety Inkwell, hyacinth",
                        "variety Lantern Row, daffodil");
        program().write("variety Penny Gloaming, crocus");
    }

    @Test
    void pottingDayOfTwelvePotsOfThreeVarieties() throws IOException, InterruptedException {
        try (Tmux terminal = program().open()) {
            terminal.waitFor("1 TODAY");
            CountedKeys hands = new CountedKeys(terminal);
            potted(hands, "4x marr x5 cel");
            potted(hands, "4x ink x3 cel");
            potted(hands, "4x lan x5 cel");

            assertThat(hands.told("potting day, 12 pots of 3 varieties")).isLessThan(POTTING_DAY_KEYS);
            Program.leave(terminal);
        }
        assertThat(program().run("pots"))
                .contains("T1-T4 'Marrow Lane' x5: cold, cellar")
                .contains("H1-H4 'Inkwell' x3: cold, cellar")
                .contains("D1-D4 'Lantern Row' x5: cold, cellar");
    }

    private static void potted(CountedKeys hands, String line) {
        hands.press("l").waitFor("A line").type(line).waitFor("in the cellar");
        hands.press("Enter").waitFor("U takes it back");
    }

    @Test
    void theRoundOfACellarWithTwoExceptions() throws IOException, InterruptedException {
        program().write("5 x Penny Gloaming x10, cellar, -20", "5 x Lantern Row x5, cellar, -20");
        program().write("5 x Inkwell x3, cellar, -20", "5 x Marrow Lane x5, cellar, -20");
        try (Tmux terminal = program().open()) {
            terminal.waitFor("cellar, 20 pots");
            CountedKeys hands = new CountedKeys(terminal);
            hands.press("Enter").waitFor("20 well, 0 marked");
            hands.press("Space", "Down", "d").waitFor("C2").waitFor("dry, watered");
            hands.press("Down", "Down", "Down", "Down", "m").waitFor("mould");
            hands.press("Enter").waitFor("round of cellar, 20 pots");

            assertThat(hands.told("the round of a cellar, 20 pots with two exceptions"))
                    .isLessThan(ROUND_KEYS);
            Program.leave(terminal);
        }
        assertThat(program().run("diary")).contains("C2: checked: dry, watered");
        assertThat(program().run("today")).doesNotContain("cellar, 20 pots");
    }

    @Test
    void aJanuaryEvening() throws IOException, InterruptedException {
        program().write("6 x Marrow Lane x5, cellar, -110", "T1-T6 roots, -1");
        program().write("Inkwell x3, cellar, -90", "H1 stair window, -9");
        program().write("Lantern Row x5, cellar, -130", "D1 kitchen sill, -20");
        try (Tmux terminal = program().open()) {
            terminal.waitFor("may come in");
            CountedKeys hands = new CountedKeys(terminal);
            hands.press("Enter").waitFor("How many");
            hands.type("3").waitFor("3_____").press("Enter").waitFor("T1-T3 into the cool room");
            hands.press("Down")
                    .press("a")
                    .waitFor("Another day")
                    .type("+3")
                    .press("Enter")
                    .waitFor("put off to");
            hands.press("l").waitFor("A line").type("d1 firs").press("Tab").waitFor("first flower");
            hands.press("Enter").waitFor("D1 first flower");

            assertThat(hands.told("a January evening: three pots in, one first flower, one put off"))
                    .isLessThan(EVENING_KEYS);
            Program.leave(terminal);
        }
        assertThat(program().run("pots")).contains("T1-T6 'Marrow Lane' x5: 3 in cold, 3 in cool");
        assertThat(program().run("pot", "D1")).contains("first flower");
    }
}
