// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.cli.Terminal.Printed;

class StandingsCommandTest {
    @TempDir
    private Path home;

    private void write(Terminal terminal, String... lines) {
        for (String line : lines) {
            assertThat(terminal.run("write", line).code()).as(line).isEqualTo(ExitCode.DONE);
        }
    }

    /** Fit for a person and for a program alike: the same varieties in the same order. */
    @Test
    void bothFormsSayTheSame() throws JsonProcessingException {
        Terminal terminal = Terminal.ofDemo(home);
        Printed plain = terminal.run("standings");
        JsonNode answer =
                new ObjectMapper().readTree(terminal.run("standings", "--json").out());
        assertThat(plain.err()).isEmpty();
        int from = 0;
        for (JsonNode standing : answer.get("standings")) {
            if (standing.get("pots").intValue() > 0) {
                int at = plain.out().indexOf("\n" + standing.get("name").textValue() + ": ", from);
                assertThat(at).as(standing.get("name").textValue()).isNotNegative();
                from = at;
            }
        }
        assertThat(answer.get("silence").isNull()).isTrue();
        assertThat(answer.get("effectiveSize").doubleValue()).isGreaterThan(500);
        assertThat(answer.get("standings"))
                .filteredOn(standing -> !standing.get("score").isNull())
                .allSatisfy(standing -> assertThat(standing.get("score").doubleValue())
                        .isBetween(
                                standing.get("low").doubleValue(),
                                standing.get("high").doubleValue()));
    }

    @ParameterizedTest
    @CsvSource({"variety, Varieties", "mixes, Potting mixes", "Place, Places of cold"})
    void byWhatIsAsked(String by, String heading) {
        assertThat(Terminal.ofDemo(home).run("standings", "--by", by).out()).startsWith(heading);
    }

    @Test
    void whatIsNoWayToStandIsSaid() {
        Terminal terminal = Terminal.ofDemo(home);
        Printed printed = terminal.run("standings", "--by", "colour");
        assertThat(printed.code()).isEqualTo(ExitCode.USED_WRONGLY);
        assertThat(printed.err()).contains("'colour'");
        assertThat(terminal.run("standings", "--by", "winter").err())
                .contains("Standings are by variety, mix or place.");
    }

    @Test
    void anEmptyJournalSaysWhereAScoreComesFrom() throws JsonProcessingException {
        Terminal terminal = Terminal.at(home);
        write(terminal, "place cellar, cellar");
        Printed printed = terminal.run("standings");
        assertThat(printed.code()).isEqualTo(ExitCode.DONE);
        assertThat(printed.out()).isEmpty();
        assertThat(printed.err()).startsWith("No score yet.");
        JsonNode answer =
                new ObjectMapper().readTree(terminal.run("standings", "--json").out());
        assertThat(answer.get("silence").textValue()).isEqualTo("no-score");
        assertThat(answer.get("standings")).isEmpty();
    }
}
