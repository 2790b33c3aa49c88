// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.cli.Terminal.Printed;

/** Effects worked out on the command line, without a journal. */
class EffectsCommandTest {
    private static final String REFERENCE = "src/test/resources/sillbook/reference/";
    private final Terminal terminal = Terminal.withoutShelf();

    @TempDir
    private Path folder;

    private Printed run(String... arguments) {
        return terminal.run(arguments);
    }

    private Printed effects(String file, String score, String factors, String... more) {
        return run(Stream.concat(
                        Stream.of("reckon", "effects", file, "--score", score, "--factors", factors), Stream.of(more))
                .toArray(String[]::new));
    }

    private Printed ofText(String text, String factors, String... more) throws IOException {
        Path file = folder.resolve("scores.csv");
        Files.writeString(file, text, UTF_8);
        return effects(file.toString(), "score", factors, more);
    }

    private static JsonNode json(Printed printed) throws JsonProcessingException {
        assertThat(printed.err()).isEmpty();
        assertThat(printed.code()).isEqualTo(ExitCode.DONE);
        return new ObjectMapper().readTree(printed.out());
    }

    /** lme4 1.1-31, and exactly by the sums of squares. */
    @Test
    void dyestuff() throws JsonProcessingException {
        JsonNode answer = json(effects(REFERENCE + "dyestuff.csv", "yield", "batch", "--method", "reml", "--json"));
        assertThat(answer.get("mean").doubleValue()).isCloseTo(1527.5, within(1e-9));
        assertThat(answer.get("se").doubleValue()).isCloseTo(19.38341, within(1e-4));
        assertThat(answer.at("/sd/batch").doubleValue()).isCloseTo(42.0006, within(1e-3));
        assertThat(answer.at("/sd/residual").doubleValue()).isCloseTo(49.5101, within(1e-3));
        assertThat(answer.get("criterion").doubleValue()).isCloseTo(319.654277, within(1e-5));
        assertThat(answer.get("effectiveSize").isNull()).isTrue();
        assertThat(answer.at("/levels/batch/E/mean").doubleValue()).isCloseTo(56.73319, within(1e-3));
        assertThat(answer.at("/levels/batch/E/sd").doubleValue()).isCloseTo(24.77303, within(1e-3));
        assertThat(answer.get("differences")).hasSize(15);
        assertThat(answer.get("confounded")).isEmpty();
    }

    @Test
    void theAverageIsTheRuleUnlessSaidOtherwise() throws JsonProcessingException {
        JsonNode answer = json(effects(REFERENCE + "sixteen-pots.csv", "SCORE", "cultivar,mix,spot", "--json"));
        assertThat(answer.get("criterion").isNull()).isTrue();
        assertThat(answer.get("effectiveSize").doubleValue()).isGreaterThan(4000);
        JsonNode first = answer.get("differences").get(0);
        assertThat(first.get("a").textValue() + first.get("b").textValue()).isEqualTo("AB");
        assertThat(first.get("mean").doubleValue()).isCloseTo(.6353, within(.003));
        assertThat(answer.get("assumed")).hasSize(2);
    }

    @Test
    void whatIsConfoundedComesFirst() throws IOException {
        Printed printed = ofText(
                "kind;score;place\ntulip;4,5;fridge\ntulip;4;fridge\nhyacinth;3;cellar\nhyacinth;2.5;cellar\n",
                "kind,place",
                "--method",
                "reml");
        assertThat(printed.out()).startsWith("cannot be told from place: kind tulip | hyacinth\n");
    }

    @Test
    void nestedIsNotConfounded() throws JsonProcessingException {
        JsonNode answer =
                json(effects(REFERENCE + "pastes.csv", "strength", "batch,cask", "--method", "reml", "--json"));
        assertThat(answer.at("/nested/0/factor").textValue()).isEqualTo("cask");
        assertThat(answer.at("/nested/0/within").textValue()).isEqualTo("batch");
        assertThat(answer.get("confounded")).isEmpty();
    }

    @Test
    void theStandardInputIsRead() {
        Printed printed = terminal.typing("score,place\n4,a\n3,b\n5,a\n4,b\n")
                .run("reckon", "effects", "-", "--score", "score", "--factors", "place");
        assertThat(printed.code()).isEqualTo(ExitCode.DONE);
        assertThat(printed.out()).startsWith("4 records, mean 4.0");
    }

    @Test
    void emptyCellsAreLeftOutAndSaid() throws IOException {
        String rows = "score,place\n4,a\n,b\n5,\n3,b\n5,a\n4,b\n3\n";
        assertThat(ofText(rows, "place").err()).isEqualTo("! Left out, as a cell is empty: rows 3, 4, 8.\n");
        String many = rows + ",a\n".repeat(20);
        assertThat(ofText(many, "place").err()).endsWith("12, 13 and 15 more.\n");
        assertThat(ofText("score,place\n4,a\n5,a\n3,\n3,a\n4,a\n", "place").err())
                .contains("row 4.", "All rows have the same place: nothing can be said of what it does.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "score,place\\n4,a\\n3,b | place | There are 2 rows with a score and all factors",
                "score,place | place | There are 0 rows",
                "score,place\\n4,a\\nfine,b\\n4,b | place | Row 3: 'fine' is no score. Write a number, as 4 or 3.5.",
                "score,place\\n4,a\\nNaN,b\\n4,b | place | Row 3: 'NaN' is no score.",
                "score,place\\n4,a\\n1e300,b\\n4,b | place | Row 3: '1e300' is no score.",
                "score,place\\n4,a\\n99999999999999,b\\n4,b | place | is no score",
                "score,place\\n4,a\\n4,b\\n4,b | place | All these scores are the same",
                "score,place\\n4,a\\n4,a\\n5,b\\n5,b | place | The factors explain every score exactly",
                "score,place\\n400,a\\n401,a\\n500,b\\n503,b | place | These scores spread by",
                "score,place\\n4,a\\n4,b\\n5,b | plaice | There is no column 'plaice'. Did you mean place?",
                "score,place\\n4,a\\n4,b\\n5,b | kind | There is no column 'kind'. There are score and place.",
                "score,place,Place\\n4,a,a\\n4,b,b\\n5,b,b | place | Two columns are named 'place'.",
            })
    void whatCannotBeWorkedOutIsSaid(String text, String factors, String says) throws IOException {
        Printed printed = ofText(text.replace("\\n", "\n"), factors);
        assertThat(printed.code()).isEqualTo(ExitCode.COULD_NOT);
        assertThat(printed.err()).contains(says);
        assertThat(printed.out()).isEmpty();
    }

    @Test
    void tooManyLevelsAreRefused() throws IOException {
        String rows = IntStream.range(0, 302)
                .mapToObj(i -> i % 5 + ",p" + i)
                .collect(Collectors.joining("\n", "score,place\n", "\n"));
        assertThat(ofText(rows, "place").err()).contains("have 302 levels in all, and 300 are the most");
    }

    @Test
    void anExactFitHasNoAnswerByRemlEither() throws IOException {
        assertThat(ofText("score,place\n4,a\n3,b\n5,c\n", "place", "--method", "reml")
                        .code())
                .isEqualTo(ExitCode.COULD_NOT);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "reckon effects no.csv --factors a | It is not said which column holds the scores. Write --score.",
                "reckon effects no.csv --score a | It is not said what the scores were made under.",
                "reckon effects no.csv --score a --factors b,, | 'b,,' names an empty column.",
                "reckon effects no.csv --score a --factors b,b | 'b,b' names a column twice.",
                "reckon effects no.csv --score a --factors b --method guess | 'guess' is no method.",
            })
    void whatIsUsedWronglyIsSaid(String line, String says) {
        Printed printed = run(line.split(" "));
        assertThat(printed.code()).isEqualTo(ExitCode.USED_WRONGLY);
        assertThat(printed.err()).contains(says);
    }

    @Test
    void aFileThatIsNotThere() {
        Printed printed = effects(folder.resolve("no.csv").toString(), "a", "b");
        assertThat(printed.code()).isEqualTo(ExitCode.COULD_NOT);
        assertThat(printed.err()).endsWith("no.csv: There is no such file.\n");
        assertThat(effects("a\0b", "a", "b").code()).isEqualTo(ExitCode.USED_WRONGLY);
    }
}
