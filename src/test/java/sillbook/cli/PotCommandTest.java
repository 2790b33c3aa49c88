// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One pot by its label, in whatever season it is looked for. */
class PotCommandTest {
    @TempDir
    private Path home;

    private Terminal amaryllis() {
        Terminal terminal = Terminal.at(home);
        List.of(
                        "place sill, warm sill",
                        "Umbrella Street (amaryllis) x1, sill, 10 nov 2024",
                        "A1 first flower, 2 jan 2025",
                        "A1 past bloom, 25 jan 2025",
                        "A1 rested, 15 sep 2025",
                        "A1 woken, 20 nov 2025")
                .forEach(line -> terminal.run("write", line));
        return terminal;
    }

    @Test
    void aPlantThatLivesOnIsFoundByItsLabelInEverySeasonItLivesIn() {
        Terminal terminal = amaryllis();

        assertThat(terminal.run("pot", "A1").out()).startsWith("A1 'Umbrella Street' x1, winter 2: ");
        assertThat(terminal.run("pot", "a1", "--season", "2025").code()).isEqualTo(ExitCode.DONE);
        assertThat(terminal.run("pot", "A1", "--season", "2024").code()).isEqualTo(ExitCode.DONE);
    }

    @Test
    void aLabelThatIsNotThereIsNamedWithTheSeasonThatWasLookedIn() {
        Terminal terminal = amaryllis();

        assertThat(terminal.run("pot", "T9").err())
                .contains("There is no pot 'T9' in season 2026-27. 'sillbook pots' lists those there are.");
        assertThat(terminal.run("pot", "A1", "--season", "2023").err()).contains("in season 2023-24");
    }
}
