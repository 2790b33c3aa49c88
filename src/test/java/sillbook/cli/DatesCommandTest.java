// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static java.time.temporal.ChronoUnit.DAYS;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.cli.Terminal.Printed;

/** Days worked out on the command line, without a journal. */
class DatesCommandTest {
    private final Terminal terminal = Terminal.withoutShelf();

    private Printed run(String line) {
        return terminal.run(Stream.concat(Stream.of("reckon", "dates"), Stream.of(line.split(" ")))
                .toArray(String[]::new));
    }

    private JsonNode json(String line) throws JsonProcessingException {
        Printed printed = run(line + " --json");
        assertThat(printed.code()).isEqualTo(ExitCode.DONE);
        assertThat(printed.err()).isEmpty();
        return new ObjectMapper().readTree(printed.out());
    }

    /** Rutgers Cooperative Extension: hyacinths wished for 1 March go into the cold about 1 November. */
    @Test
    void thePublishedExampleHoldsToTwoDays() throws JsonProcessingException {
        JsonNode answer = json("--kind hyacinth --bloom 2027-03-01 --cold-weeks 15 --after-weeks 2");
        LocalDate cold = LocalDate.parse(answer.at("/stages/cold/likely").textValue());

        assertThat(Math.abs(DAYS.between(LocalDate.of(2026, 11, 1), cold))).isLessThanOrEqualTo(2);
        assertThat(answer.get("warnings")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "no-potted-cold, --kind tulip --potted 2026-12-01 --cold-weeks 0",
        "dry-credit, --kind tulip --potted 2026-12-01 --cold-weeks 15 --cooled 12",
        "too-little-cold, --kind tulip --potted 2026-10-03 --out 2026-11-30",
        "late, --kind tulip --potted 2026-10-05 --bloom 2027-01-30",
        "too-late, --kind amaryllis --potted 2026-11-20 --bloom 2026-12-01",
        "not-reachable, --kind tulip --potted 2026-10-05 --bloom 2026-10-01"
    })
    void whatIsAmissIsWarnedOf(String code, String line) throws JsonProcessingException {
        List<String> codes = json(line).get("warnings").findValuesAsText("code");

        assertThat(codes).contains(code);
        assertThat(run(line).err()).startsWith("! ");
    }

    @Test
    void tenWeeksCooledAndFivePottedWarnOfNothing() throws JsonProcessingException {
        JsonNode answer = json("--kind tulip --potted 2026-12-01 --cold-weeks 15 --cooled 10 --out 2027-01-05");

        assertThat(answer.get("warnings")).isEmpty();
    }

    @Test
    void aWishThatCanBeMetIsSaidToBe() throws JsonProcessingException {
        JsonNode answer = json("--kind tulip --potted 2026-10-05 --bloom 2027-02-15");

        assertThat(answer.at("/wish/verdict").textValue()).isEqualTo("reachable");
        assertThat(run("--kind tulip --potted 2026-10-05 --bloom 2027-02-15").out())
                .contains("wish: Mon 15 Feb 2027, reachable");
    }

    @Test
    void whatIsTakenForGrantedIsSaid() throws JsonProcessingException {
        assertThat(json("--kind tulip --potted 2026-10-05").get("assumed").toString())
                .contains("the cold began on the day of potting");
        assertThat(json("--kind paperwhite --potted 2026-12-01 --cooled 4")
                        .at("/stages/cold")
                        .isNull())
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--kind tulip | No day is given",
                "--kind tulip --bloom | --bloom needs DAY after it.",
                "--kind tulip --potted 31nov | November has 30 days",
                "--kind tulup --bloom 2027-03-01 | Did you mean tulip?",
                "--kind tulip --bloom 2027-03-01 --cold-weeks 5,4,3 | is not in order",
                "--kind tulip --bloom 2027-03-01 --cold-weeks 5,4 | neither one number of weeks nor three",
                "--kind tulip --bloom 2027-03-01 --cold-weeks -5 | is no number of weeks",
                "--kind tulip --bloom 2027-03-01 --bloom 2027-03-02 | takes --bloom only once",
                "--kind tulip --potted 2027-03-01 --out 2027-01-01 | Write the days in order.",
                "--bloom 2027-03-01 | Write --kind and a kind."
            })
    void whatCannotBeReadIsMisuse(String line, String says) {
        Printed printed = run(line);

        assertThat(printed.code()).isEqualTo(ExitCode.USED_WRONGLY);
        assertThat(printed.out()).isEmpty();
        assertThat(printed.err()).contains(says);
    }
}
