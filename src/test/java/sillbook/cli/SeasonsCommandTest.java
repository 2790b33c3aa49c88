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
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.cli.Terminal.Printed;

class SeasonsCommandTest {
    @TempDir
    private Path home;

    private static JsonNode json(Printed printed) throws JsonProcessingException {
        return new ObjectMapper().readTree(printed.out());
    }

    @Test
    void bothFormsSayTheSame() throws JsonProcessingException {
        Terminal terminal = Terminal.ofDemo(home);
        String plain = terminal.run("seasons").out();
        JsonNode answer = json(terminal.run("seasons", "--json"));
        assertThat(answer.get("seasons"))
                .isNotEmpty()
                .allSatisfy(winter -> assertThat(plain)
                        .contains(winter.get("season").textValue() + ": "
                                + winter.get("pots").intValue() + " pots"));
        assertThat(answer.get("records"))
                .isNotEmpty()
                .allSatisfy(record ->
                        assertThat(plain).contains("\n" + record.get("name").textValue() + ": "));
    }

    /** The winters add up to the records: what is judged of all winters is judged of the varieties. */
    @ParameterizedTest
    @ValueSource(strings = {"judged", "well", "fair", "failed"})
    void theWintersAddUpToTheRecords(String field) throws JsonProcessingException {
        JsonNode answer = json(Terminal.ofDemo(home).run("seasons", "--json"));
        assertThat(sum(answer.get("seasons"), field)).isPositive().isEqualTo(sum(answer.get("records"), field));
    }

    private static int sum(JsonNode list, String field) {
        int sum = 0;
        for (JsonNode one : list) {
            sum += one.get(field).intValue();
        }
        return sum;
    }

    @Test
    void oneSeasonIsThatOneAlone() throws JsonProcessingException {
        Terminal terminal = Terminal.ofDemo(home);
        JsonNode one = json(terminal.run("seasons", "--season", "2025-26", "--json"));
        assertThat(one.get("seasons"))
                .singleElement()
                .satisfies(
                        winter -> assertThat(winter.get("season").textValue()).isEqualTo("2025-26"));
        assertThat(sum(one.get("records"), "judged"))
                .isEqualTo(one.get("seasons").get(0).get("judged").intValue());
        assertThat(terminal.run("seasons", "--season", "1990").err()).startsWith("No pot was grown");
    }

    @Test
    void whatNothingIsCountedByIsSaid() {
        Printed printed = Terminal.ofDemo(home).run("seasons", "--by", "colour");
        assertThat(printed.code()).isEqualTo(ExitCode.USED_WRONGLY);
        assertThat(printed.err()).contains("'colour'");
    }

    @Test
    void anEmptyJournalHasNone() throws JsonProcessingException {
        Terminal terminal = Terminal.at(home);
        assertThat(terminal.run("write", "place cellar, cellar").code()).isEqualTo(ExitCode.DONE);
        assertThat(terminal.run("seasons").out()).isEmpty();
        assertThat(json(terminal.run("seasons", "--json")).get("seasons")).isEmpty();
    }
}
