// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Seen on Tue 12 January 2027. */
class PlacesCommandTest {
    @TempDir
    private Path home;

    @ParameterizedTest
    @CsvSource({
        "5 jan 2027, next round Fri 15 Jan",
        "2 jan 2027, round due today",
        "1 jan 2027, round due since Mon 11 Jan"
    })
    void aRoundIsNextOrDue(String potted, String says) {
        Terminal terminal = Terminal.at(home);
        terminal.run("write", "place cellar, cellar, check every 10");
        terminal.run("write", "Marrow Lane (tulip) x5, 19 cm, cellar, " + potted);

        assertThat(terminal.run("places").out()).contains("; " + says + "; ");
    }

    @Test
    void aDayThatWasReadAMomentAgoIsTheLastOne() {
        Terminal terminal = Terminal.at(home);
        terminal.run("write", "place fridge, fridge");
        terminal.run("write", "fridge 3 to 8 since 1 jan 2027");
        terminal.run("write", "fridge 5 C");

        assertThat(terminal.run("places", "--json").out()).contains("\"lastReadOn\": \"2027-01-12\"");
    }
}
