// SPDX-License-Identifier: Apache-2.0
package sillbook.story;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * The demo's past winters are asked what was worth growing: the variety with the best plain mean had the best place all along,
 * and the book says so.
 */
@ExtendWith(NeedsTmux.class)
class SeasonsIT {
    private static Tmux demo() {
        return Tmux.terminal().run(Program.FILE, "demo").waitFor("1 TODAY");
    }

    @Test
    void theBestPlainMeanOnlyHadTheBestPlace() {
        try (Tmux terminal = demo()) {
            terminal.press("6").waitFor("What did well").waitFor("4 winters");
            assertThat(firstVariety(terminal.screen()))
                    .contains("'Tuesday Coat'")
                    .contains("8     8");

            terminal.press("v")
                    .waitFor("E effects")
                    .press("e")
                    .waitFor("taken out")
                    .waitForNo("A first answer");
            assertThat(firstVariety(terminal.screen())).contains("'Night Marbles'");

            terminal.press("Down", "Down", "Down", "Down", "Down")
                    .waitFor("'Tuesday Coat'  Plain mean 4.5, the best; but all 8 stood in the best place,")
                    .waitFor("garage fridge. Taken out: 4.0; 'Night Marbles' leads.");
            terminal.press("Enter").waitFor("8 pots").waitFor("T9");
            terminal.press("Escape").waitFor("taken out").press("w").waitFor("plain mean");
            Program.leave(terminal.press("Escape").waitFor("taken out"));
        }
    }

    @Test
    void theWintersStandSideBySideAndOneIsRead() {
        try (Tmux terminal = demo()) {
            terminal.press("6")
                    .waitFor("What did well")
                    .press("v")
                    .press("s")
                    .waitFor("2023-24")
                    .waitFor("2025-26");
            terminal.press("Enter").waitFor("flowered").waitFor("Best");
            Program.leave(terminal.press("Escape").waitFor("2023-24"));
        }
    }

    private static String firstVariety(String screen) {
        return screen.lines().filter(line -> line.contains("'")).findFirst().orElse("no variety");
    }
}
