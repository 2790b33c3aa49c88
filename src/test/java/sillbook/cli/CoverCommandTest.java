// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.cli.Terminal.Printed;

/** A season kept in bloom on the command line, without a journal. */
class CoverCommandTest {
    /** Of its best plans one is the only one: an integer program and a trial of all 41 616 plans agree. */
    private static final String FOUR = """
            {"season": {"from": 100, "to": 129}, "room": null, "pots": [
             {"earliest": 70, "latest": 80, "toBloom": 21, "lasts": 8, "takes": 1},
             {"earliest": 75, "latest": 85, "toBloom": 21, "lasts": 8, "takes": 1},
             {"earliest": 80, "latest": 95, "toBloom": 21, "lasts": 8, "takes": 1},
             {"earliest": 85, "latest": 100, "toBloom": 21, "lasts": 8, "takes": 1}]}
            """;

    @TempDir
    private Path folder;

    private final Terminal terminal = Terminal.withoutShelf();

    private Printed run(String document, String... words) throws IOException {
        Path file = Files.writeString(folder.resolve("season.json"), document, UTF_8);
        return terminal.run(Stream.concat(Stream.of("reckon", "cover", file.toString()), Stream.of(words))
                .toArray(String[]::new));
    }

    private JsonNode json(String document) throws IOException {
        Printed printed = run(document, "--json");
        assertThat(printed.code()).as(printed.err()).isEqualTo(ExitCode.DONE);
        return parsed(printed.out());
    }

    private static JsonNode parsed(String text) throws JsonProcessingException {
        return new ObjectMapper().readTree(text);
    }

    @Test
    void theOneBestPlanAsJson() throws IOException {
        JsonNode answer = json(FOUR);
        assertThat(answer.get("pulls")).isEqualTo(parsed("[76, 84, 92, 100]"));
        assertThat(answer.get("gapDays").intValue()).isEqualTo(1);
        assertThat(answer.get("used").intValue()).isEqualTo(4);
        assertThat(answer.get("overlap").intValue()).isZero();
        assertThat(answer.get("longestGap").intValue()).isEqualTo(1);
        assertThat(answer.get("proven").booleanValue()).isTrue();
        assertThat(answer.get("bound"))
                .isEqualTo(parsed("{\"unmet\": 0, \"gapDays\": 1, \"used\": 4, \"overlap\": 0}"));
        assertThat(answer.get("sites")).isEqualTo(parsed("[1, 1, 1, 1]"));
        assertThat(answer.get("cold")).isEqualTo(parsed("[null, null, null, null]"));
        assertThat(answer.get("assumed")).isEqualTo(parsed("[\"room for every pot\"]"));
    }

    @Test
    void inPlainLines() throws IOException {
        assertThat(run(FOUR).out().lines())
                .containsExactly(
                        "days without bloom: 1, proven the least; 1 of them in a row at most",
                        "pots used: 4, proven the least",
                        "overlap: 0, proven the least",
                        "pot 1: in on day 76, in bloom from 97 to 104",
                        "pot 2: in on day 84, in bloom from 105 to 112",
                        "pot 3: in on day 92, in bloom from 113 to 120",
                        "pot 4: in on day 100, in bloom from 121 to 128");
    }

    @Test
    void placesWishesAndLikePots() throws IOException {
        String document = """
                {"season": {"from": 10, "to": 13}, "sites": [{"room": 1}, {"room": 2}], "cold": [{"room": 3}, {"room": null}],
                 "pots": [{"earliest": 0, "latest": 2, "toBloom": [20, 20, 8], "lasts": 4, "takes": 2, "count": 2,
                           "cold": {"from": -60, "places": [1, 2]}},
                          {"earliest": 5, "latest": 5, "toBloom": 5, "lasts": 2, "sites": [1]},
                          {"earliest": 200, "latest": 200, "toBloom": 5, "lasts": 2}],
                 "wishes": [{"day": 11, "pots": [2]}]}
                """;
        assertThat(run(document).out().lines())
                .containsExactly(
                        "pots that wishes lack: 0, proven the least",
                        "days without bloom: 0, proven the least",
                        "pots used: 2, proven the least",
                        "overlap: 2, proven the least",
                        "pot 1: in on day 2, in bloom from 10 to 13, site 2, from cold place 1",
                        "pot 2: in on day 5, in bloom from 10 to 11, site 1",
                        "not used: 1 of pot 1, pot 3");
        JsonNode answer = json(document);
        assertThat(answer.get("pulls")).isEqualTo(parsed("[2, null, 5, null]"));
        assertThat(answer.get("sites")).isEqualTo(parsed("[2, null, 1, null]"));
        assertThat(answer.get("assumed")).isEqualTo(parsed("[\"a pot takes a room of 1\"]"));
    }

    @Test
    void fromTheStandardInputWithProgress() {
        Printed printed =
                Terminal.withoutShelf().typing(FOUR).run("reckon", "cover", "-", "--progress", "--seconds", "60");
        assertThat(printed.out()).startsWith("days without bloom: 1, proven the least");
        assertThat(printed.err()).endsWith("1 day without bloom (at least 1), 4 pots so far\n");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "{\"season\": {\"from\": 9, \"to\": 3}} | The season ends on day 3, before it starts on day 9.",
                "{\"season\": {\"from\": 1}} | The to of the season of the file is not said. Write a whole number.",
                "{\"season\": {\"from\": 1, \"to\": NaN}} | It is no JSON: line 1, column 33 cannot be read.",
                "{\"season\": {\"from\": 1, \"to\": 2.5}} | The to of the season of the file is 2.5. Write a whole number.",
                "{\"season\": {\"from\": 1, \"to\": 9e99}} | The to of the season of the file is 9.0E99, too large a number. Write one of at most 9 digits.",
                "{\"season\": {\"from\": -99999999999, \"to\": 2}} | The from of the season of the file is -99999999999, too large a number. Write one of at most 9 digits.",
                "{\"season\": {\"from\": 1, \"to\": 2}, \"pots\": [{\"earliest\": 1, \"latest\": 2, \"toBloom\": 3, \"lasts\": 2, \"cold\": {\"from\": 0, \"places\": [9]}}]} | The cold place is 9; no cold place is given.",
                "{\"season\": {\"from\": 1, \"to\": 2}, \"room\": -3} | The room is -3; it must be 0 to 1000000.",
                "{\"season\": {\"from\": 1, \"to\": 2}, \"room\": 3, \"sites\": []} | The file has a room and sites. Give each site its room.",
                "{\"season\": {\"from\": 1, \"to\": 2}, \"pots\": [{\"earliest\": 5, \"latest\": 4, \"toBloom\": 3, \"lasts\": 2}]} | Pot 1: the latest day 4 is before the earliest, 5.",
                "{\"season\": {\"from\": 1, \"to\": 2}, \"pots\": [{\"earliest\": 5, \"latest\": 6, \"toBloom\": [3], \"lasts\": 2}]} | Pot 1: there are 1 numbers of days to bloom for 2 days to come in on; one is wanted, or one for each.",
                "{\"season\": {\"from\": 1, \"to\": 2}, \"pots\": [{\"earliest\": 1, \"latest\": 2, \"toBloom\": 3, \"lasts\": 2, \"count\": 10000}]} | Pot 1: the number of pots is 10000; it must be 1 to 500.",
                "{\"season\": {\"from\": 1, \"to\": 2}, \"pots\": 7} | The pots of the file are no list in brackets.",
                "{\"season\": {\"from\": 1, \"to\": 2}, \"pots\": [7]} | Pot 1 is no object in braces.",
                "{\"season\": {\"from\": 1, \"to\": 2}, \"wishes\": [{\"day\": 7}]} | The day of a wish is 7; it must be 1 to 2.",
                "{\"season\": {\"from\": 1, \"to\": 2}, \"shelf\": 3} | The file has a field 'shelf'. Those it may have are season, room, sites, cold, pots, wishes.",
                "{\"season\": {\"from\": 1, \"to\": Infinity}} | It is no JSON: line 1, column 38 cannot be read.",
                "{\"season\": {\"from\": 1, \"to\": 1e400}} | The to of the season of the file is \"Infinity\". Write a whole number.",
                "{\"season\": {\"from\": 1, \"to\": 2}, \"sites\": []} | The number of sites is 0; it must be 1 to 20.",
                "{\"season\": {\"from\": 1, \"to\": 2}, \"pots\": [{\"earliest\": 1, \"latest\": 2, \"toBloom\": 3, \"lasts\": 2, \"takes\": -2}]} | Pot 1: the room a pot takes is -2; it must be 1 to 1000.",
                "{\"season\": {\"from\": 1, \"to\": 2}, \"pots\": [{\"earliest\": 1, \"latest\": 2, \"toBloom\": [], \"lasts\": 2}]} | Pot 1: there are 0 numbers of days to bloom for 2 days to come in on; one is wanted, or one for each.",
                "{\"season\": {\"from\": 1, \"to\": 2}} {} | It is no JSON: line 1, column 34 cannot be read.",
                "{\"season\": {\"from\": 1, \"from\": 2, \"to\": 2}} | It is no JSON: line 1, column 30 cannot be read.",
                "[] | The file is no object in braces."
            })
    void whatCannotBeIsSaid(String document, String sentence) throws IOException {
        Printed printed = run(document);
        assertThat(printed.code()).isEqualTo(ExitCode.COULD_NOT);
        assertThat(printed.err()).isEqualTo(folder.resolve("season.json") + ": " + sentence + "\n");
        assertThat(printed.out()).isEmpty();
    }

    @Test
    void whatNobodyWritesIsSaidToo() throws IOException {
        String nobody =
                ": It is JSON of a sort that nobody writes: too deep, or with a number too long. Name another.\n";
        assertThat(run("[".repeat(100_000)).err()).endsWith(nobody);
        assertThat(run("{\"season\": {\"from\": " + "9".repeat(5_000) + ", \"to\": 2}}")
                        .err())
                .endsWith(nobody);
        assertThat(run(" ".repeat(5_000_000) + FOUR).err())
                .endsWith(": It is larger than 4 MB, which no season is. Name another.\n");
    }

    @Test
    void tenThousandPotsAreRefused() throws IOException {
        String pot = "{\"earliest\": 1, \"latest\": 2, \"toBloom\": 3, \"lasts\": 2}";
        String pots = Stream.generate(() -> pot).limit(10_000).collect(Collectors.joining(","));
        Printed printed = run("{\"season\": {\"from\": 1, \"to\": 9}, \"pots\": [" + pots + "]}");
        assertThat(printed.code()).isEqualTo(ExitCode.COULD_NOT);
        assertThat(printed.err()).endsWith(": The number of pots is 10000; it must be 0 to 500.\n");
    }

    @Test
    void aFileThatIsNotThereAndATimeThatIsNone() throws IOException {
        assertThat(terminal.run("reckon", "cover", "nowhere.json").err())
                .isEqualTo("nowhere.json: There is no such file.\n");
        Printed never = run(FOUR, "--seconds", "0");
        assertThat(never.code()).isEqualTo(ExitCode.USED_WRONGLY);
        assertThat(never.err()).isEqualTo("'0' is no time to search in. Write a number of seconds above 0.\n");
    }
}
