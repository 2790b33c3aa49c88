// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.cli.Terminal.Printed;

/** Pots on a shelf on the command line; what is reckoned is held to its sources where it is reckoned. */
class ShelfCommandTest {
    private final Terminal terminal = Terminal.withoutShelf();

    @TempDir
    private Path folder;

    private Printed run(String... words) {
        return terminal.run(
                Stream.concat(Stream.of("reckon", "shelf"), Stream.of(words)).toArray(String[]::new));
    }

    private JsonNode json(String... words) throws JsonProcessingException {
        Printed printed =
                run(Stream.concat(Stream.of(words), Stream.of("--json")).toArray(String[]::new));
        assertThat(printed.code()).as(printed.err()).isEqualTo(ExitCode.DONE);
        return new ObjectMapper().readTree(printed.out());
    }

    private String file(String text) throws IOException {
        return Files.writeString(folder.resolve("stays.json"), text).toString();
    }

    @Test
    void sideBySide() throws JsonProcessingException {
        JsonNode answer = json("--shelf", "24x16in", "--pot", "7.5in");
        assertThat(answer.get("count").intValue()).isEqualTo(6);
        assertThat(answer.get("upperBound").intValue()).isEqualTo(6);
        assertThat(answer.get("proven").booleanValue()).isTrue();
        assertThat(answer.get("pattern").textValue()).isEqualTo("square");
        assertThat(answer.get("positions")).hasSize(6);
        assertThat(answer.get("headroom").isNull()).isTrue();
        assertThat(run("--shelf", "24x16in", "--pot", "7.5in").out())
                .isEqualTo("6 pots of 19.1 cm across; no more can stand there\nset: square\n");
    }

    @Test
    void wherePatternsFailASearchIsShown() {
        assertThat(run("--shelf", "24x16in", "--pot", "6.5in").out())
                .startsWith("8 pots of 16.5 cm across; no more can stand there\nset: irregular, found by a search\n")
                .contains("along the width and the depth:\n   1");
        assertThat(run("--shelf", "36x12in", "--pot", "7.5in").out()).contains("set: rows along the depth\n");
        assertThat(run("--shelf", "48x18in", "--pot", "5in").out())
                .contains("36 pots of 12.7 cm across; more than 38 cannot\nset: rows along the width\n");
    }

    @Test
    void whatIsOverTheShelf() throws JsonProcessingException {
        JsonNode answer = json("--shelf", "60x40", "--pot", "15", "--height", "45", "--shoot", "20");
        assertThat(answer.get("headroom").doubleValue()).isEqualTo(10);
        assertThat(answer.get("assumed")).hasSize(1);
        assertThat(json("--shelf", "60x40", "--pot", "15", "--height", "45", "--pot-height", "14")
                        .at("/assumed/0")
                        .textValue())
                .isEqualTo("no shoot over the rim");
        assertThat(run("--shelf", "60x40", "--pot", "15", "--height", "45", "--shoot", "20")
                        .out())
                .contains("over pot and shoot are 10 cm left\n");
        assertThat(run("--shelf", "60x40", "--pot", "15", "--height", "45", "--pot-height", "14", "--shoot", "35")
                        .err())
                .contains("Pot and shoot want 49 cm, and there are 45 cm over the shelf: none stands upright.");
    }

    @Test
    void aPotWiderThanTheShelf() throws JsonProcessingException {
        assertThat(json("--shelf", "60x40", "--pot", "41").get("count").intValue())
                .isZero();
        assertThat(run("--shelf", "60x40", "--pot", "41").err()).contains("A pot of 41 cm is wider than the shelf.");
    }

    @Test
    void overTime() throws IOException {
        String sevenStays = file("[{\"from\":4,\"to\":6,\"takes\":1},{\"from\":0,\"to\":4,\"takes\":2},"
                + "{\"from\":6,\"to\":9,\"takes\":2},{\"from\":2,\"to\":6,\"takes\":1},{\"from\":2,\"to\":5,\"takes\":1},"
                + "{\"from\":5,\"to\":8,\"takes\":2},{\"from\":0,\"to\":2,\"takes\":2}]");
        JsonNode answer = json("--stays", sevenStays);
        assertThat(answer.get("load").intValue()).isEqualTo(4);
        assertThat(answer.get("places").intValue()).isEqualTo(5);
        assertThat(answer.get("atLeast").intValue()).isEqualTo(5);
        assertThat(answer.get("proven").booleanValue()).isTrue();
        assertThat(answer.get("offsets")).hasSize(7);
        assertThat(run("--stays", sevenStays).out()).isEqualTo("""
                        taken at the same time: 4 at most
                        wanted where each keeps its place: 5, and it cannot be less
                        """);
    }

    @Test
    void daysMayBeWrittenAndComeByStandardInput() {
        assertThat(terminal.typing("[{\"from\":\"2027-01-01\",\"to\":\"2027-01-05\",\"takes\":3}]")
                        .run("reckon", "shelf", "--stays", "-")
                        .out())
                .startsWith("taken at the same time: 3 at most\n");
        assertThat(terminal.typing("[]").run("reckon", "shelf", "--stays", "-").out())
                .startsWith("taken at the same time: 0 at most\n");
    }

    @Test
    void manyOfManyWidthsHaveABound() throws IOException {
        String many = IntStream.range(0, 300)
                .mapToObj(i -> "{\"from\":" + i * 37 % 90 + ",\"to\":" + (i * 37 % 90 + 5 + i * 53 % 17) + ",\"takes\":"
                        + (7 + i * 29 % 13) + "}")
                .collect(Collectors.joining(",", "[", "]"));
        assertThat(run("--stays", file(many)).out()).contains(", at least ");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "{ | It is no JSON: line 1, column",
                "{} | It is no list of at most 10000 stays.",
                "[{\"from\":0,\"to\":5}] | Stay 1 is none.",
                "[{\"from\":5,\"to\":5,\"takes\":1}] | Stay 1 is none.",
                "[{\"from\":0,\"to\":5,\"takes\":-1}] | Stay 1 is none.",
                "[{\"from\":0,\"to\":5,\"takes\":1.5}] | Stay 1 is none.",
                "[{\"from\":0,\"to\":5,\"takes\":10001}] | Stay 1 is none.",
                "[{\"from\":0,\"to\":5,\"takes\":1},{\"from\":\"soon\",\"to\":5,\"takes\":1}] | Stay 2 is none.",
                "[{\"from\":99999999999999999999,\"to\":5,\"takes\":1}] | Stay 1 is none.",
                "[{\"from\":-2000000000,\"to\":5,\"takes\":1}] | Stay 1 is none.",
                "[NaN] | It is no JSON: line 1, column",
                "[1] | Stay 1 is no object in braces.",
                "[{\"from\":0,\"to\":5,\"takes\":1,\"width\":2}] | Stay 1 has a field 'width'.",
                "[{\"from\":0,\"to\":5,\"takes\":1,\"takes\":2}] | It is no JSON: line 1, column",
                "[] [] | It is no JSON: line 1, column",
            })
    void whatIsWrongInAFileIsNamed(String text, String sentence) throws IOException {
        String file = file(text);
        Printed printed = run("--stays", file);
        assertThat(printed.code()).isEqualTo(ExitCode.COULD_NOT);
        assertThat(printed.err()).startsWith(file + ": " + sentence);
    }

    @Test
    void whatNobodyWritesIsSaidToo() throws IOException {
        assertThat(run("--stays", file("[".repeat(100_000))).err())
                .endsWith(
                        ": It is JSON of a sort that nobody writes: too deep, or with a number too long. Name another.\n");
        assertThat(run("--stays", file(" ".repeat(5_000_000) + "[]")).err())
                .endsWith(": It is larger than 4 MB, which no list of stays is. Name another.\n");
    }

    /** As many as are taken: the shelf they want is found, or a bound for it given, and one more is refused. */
    @Test
    void tenThousandStays() throws IOException {
        IntFunction<String> stays = count -> IntStream.range(0, count)
                .mapToObj(i -> "{\"from\":" + i * 37 % 300 + ",\"to\":" + (301 + i * 53 % 99) + ",\"takes\":"
                        + (1 + i * 29 % 9973) + "}")
                .collect(Collectors.joining(",", "[", "]"));
        JsonNode answer = json("--stays", file(stays.apply(10_000)));
        assertThat(answer.get("offsets")).hasSize(10_000);
        assertThat(answer.get("places").longValue())
                .isGreaterThanOrEqualTo(answer.get("load").longValue());
        assertThat(run("--stays", file(stays.apply(10_001))).err()).contains("It is no list of at most 10000 stays.");
    }

    @Test
    void aFileThatIsNotThere() {
        assertThat(run("--stays", "nowhere.json").err()).startsWith("nowhere.json: There is no such file.");
        assertThat(run("--stays", "a\0b").code()).isEqualTo(ExitCode.USED_WRONGLY);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "--shelf 60x40 | It is not said how wide a pot is. Write --pot 15.",
                "--pot 15 | It is not said how large the shelf is. Write --shelf 60x40.",
                "--shelf 60 --pot 15 | '60' is no shelf. Write how wide and how deep it is, --shelf 60x40.",
                "--shelf 60x-40 --pot 15 | '-40' is no length.",
                "--shelf 60xNaN --pot 15 | 'NaN' is no length.",
                "--shelf 60x0 --pot 15 | '0' is no size.",
                "--shelf 60x40 --pot 0 | '0' is no width of a pot.",
                "--shelf 60x40 --pot 15 --shoot 3 | Against which height?",
                "--shelf 60x40 --pot 15 --height 0 | '0' is no height.",
                "--shelf 60x40 --pot 15 --stays x | Write --shelf 60x40 and --pot 15, or --stays and a file: one of both.",
            })
    void anOptionUsedWronglyIsSaid(String options, String sentence) {
        Printed printed = run(options.split(" ", -1));
        assertThat(printed.code()).isEqualTo(ExitCode.USED_WRONGLY);
        assertThat(printed.err()).startsWith(sentence);
    }

    @Test
    void whatIsBeyondCountingIsSaid() {
        assertThat(run("--shelf", "9999x40", "--pot", "1"))
                .satisfies(printed -> assertThat(printed.code()).isEqualTo(ExitCode.COULD_NOT))
                .satisfies(printed ->
                        assertThat(printed.err()).startsWith("The shelf is more than 200 times as wide as a pot"));
    }
}
