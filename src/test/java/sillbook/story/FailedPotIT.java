// SPDX-License-Identifier: Apache-2.0
package sillbook.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A pot that froze in its trench: the signs are marked, the book says which causes its own entries speak for, one is confirmed. */
@ExtendWith(NeedsTmux.class)
class FailedPotIT {
    private static final int MOST_KEYS = 20;

    @TempDir
    private Path home;

    private Program program() {
        return new Program(home);
    }

    @BeforeEach
    void winter() throws IOException, InterruptedException {
        program().write("place trench, trench");
        program().write("Ninepenny Hat (tulip single early) x6, 18 cm, trench, " + ago(90));
        program().write("trench -3 to 4 C, since " + ago(12));
        program().write("note T1: frost all week");
    }

    private static String ago(int days) {
        return LocalDate.now(ZoneId.systemDefault()).minusDays(days).toString();
    }

    @Test
    void theSignsAreMarkedAndACauseIsConfirmed() throws IOException, InterruptedException {
        try (Tmux terminal = program().open()) {
            terminal.waitFor("1 TODAY");
            CountedKeys hands = new CountedKeys(terminal);

            hands.press("2").waitFor("2 POTS");
            hands.press("o").waitFor("Write down").press("f").waitFor("What went wrong?");
            hands.press("Right", "Right", "Right", "Right", "Space").waitFor("+ rot");
            hands.press("Down", "Right", "Space").waitFor("+ brown").waitFor("+ frozen");
            hands.press("Enter").waitFor("2 entries.").waitFor("Fits it: rot");
            hands.press("Enter").waitFor("U takes it back");
            hands.press("Enter").waitFor("cause: frozen");

            assertThat(hands.told("a failed pot, its signs and its cause")).isLessThanOrEqualTo(MOST_KEYS);
            Program.leave(terminal);
        }
        assertThat(program().run("pot", "T1"))
                .contains("rot, roots brown, cause: frozen")
                .contains("Fits it: rot (▫), roots brown (common practice).");
    }
}
