// SPDX-License-Identifier: Apache-2.0
package sillbook.story;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The program as it was packaged, in a terminal. */
@ExtendWith(NeedsTmux.class)
class PackagedProgramIT {
    private static final String PROGRAM = System.getProperty("sillbook.program", "target/sillbook/bin/sillbook");

    @Test
    void saysItsNameInATerminal() {
        try (Tmux tmux = Tmux.terminal().run(PROGRAM, "--version")) {
            tmux.waitUntil("it has said something", screen -> !screen.isBlank());
            assertThat(tmux.screen()).startsWithIgnoringCase("sillbook");
            assertThat(tmux.exitCode()).isZero();
        }
    }

    @Test
    void anyWindowWillDoAndThePageComesBackAsItWas() {
        try (Tmux tmux = Tmux.terminal().run(PROGRAM, "demo")) {
            tmux.waitFor("2 Pots").press("2").waitFor("POTS").press("Down", "Down");
            tmux.waitUntil("the third line has the cursor", PackagedProgramIT::thirdLineHasTheCursor);
            tmux.resize(60, 12).waitFor("80 columns by 24 lines; this is 60 by 12.");
            tmux.resize(1, 1).resize(5, 1).waitFor("80x24");
            tmux.resize(80, 24).waitUntil("it has it again", PackagedProgramIT::thirdLineHasTheCursor);
            assertThat(tmux.cursor()).isEqualTo("4,5");
            tmux.press("q").waitFor("Enter leaves").press("Enter");
            assertThat(tmux.exitCode()).isZero();
            assertThat(tmux.isOnAlternateScreen()).isFalse();
        }
    }

    private static boolean thirdLineHasTheCursor(String screen) {
        return screen.lines().skip(5).findFirst().orElse("").startsWith("▸");
    }

    @ParameterizedTest
    @ValueSource(strings = {"C", "POSIX", "de_DE.ISO-8859-1"})
    void outsideUtf8EveryPageIsAscii(String locale) {
        try (Tmux tmux = Tmux.terminal().environment("LC_ALL", locale).run(PROGRAM, "demo")) {
            assertThat(tmux.waitFor("? keys").screen())
                    .matches("[\\x00-\\x7F]*")
                    .contains("> ! T4");
            assertThat(tmux.press("2").waitFor("POTS").screen())
                    .matches("[\\x00-\\x7F]*")
                    .contains("____", "*~~~~");
        }
    }
}
