// SPDX-License-Identifier: Apache-2.0
package sillbook.story;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The demo's cellar is looked at pot by pot, and several pots are done with at once. */
@ExtendWith(NeedsTmux.class)
class RoundIT {
    private static Tmux demo() {
        return Tmux.terminal().run(Program.FILE, "demo").waitFor("1 TODAY");
    }

    private static void leave(Tmux terminal) {
        terminal.press("q").waitFor("Enter leaves").press("Enter");
        assertThat(terminal.exitCode()).isZero();
    }

    @Test
    void aRoundWithTwoExceptionsIsOneStepTakenBackAsOne() {
        try (Tmux terminal = demo()) {
            terminal.press("g").waitFor("Go to").type("cellar").press("Enter").waitFor("Here");
            terminal.press("Escape").waitFor("PLACES").press("c").waitFor("the same as a line:");
            terminal.press("d").waitFor("dry, watered").press("Down", "m").waitFor("2 marked");

            terminal.press("Escape")
                    .waitFor("Leave it half done?")
                    .press("Escape")
                    .waitFor("2 marked");
            terminal.press("Enter").waitFor("round of cellar").waitFor("U takes it back");
            terminal.press("u").waitFor("Take back").press("Enter").waitFor("Taken back");
            leave(terminal);
        }
    }

    @Test
    void allOfAPlaceAreJottedOnAtOnce() {
        try (Tmux terminal = demo()) {
            terminal.press("2")
                    .waitFor("POTS")
                    .press("p")
                    .waitFor("Pick:")
                    .press("s")
                    .waitFor(" picked;");
            terminal.press("j")
                    .waitFor("Jot on")
                    .type("aired an hour")
                    .press("Enter")
                    .waitFor("U takes it back");
            terminal.press("7").waitFor("aired an hour");
            terminal.press("2").press("p").waitFor("Pick:").press("n").waitForNo(" picked;");
            leave(terminal);
        }
    }
}
