// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Collections;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.cli.Terminal.Printed;

/** The length of a stage worked out on the command line, without a journal. */
class StagesCommandTest {
    private final Terminal terminal = Terminal.withoutShelf();

    private Printed run(String... words) {
        return terminal.run(
                Stream.concat(Stream.of("reckon", "stages"), Stream.of(words)).toArray(String[]::new));
    }

    private JsonNode json(String... words) throws JsonProcessingException {
        Printed printed =
                run(Stream.concat(Stream.of(words), Stream.of("--json")).toArray(String[]::new));
        assertThat(printed.code()).isEqualTo(ExitCode.DONE);
        assertThat(printed.err()).isEmpty();
        return new ObjectMapper().readTree(printed.out());
    }

    /** Quantiles of Student's t as scipy 1.17 prints them. */
    @ParameterizedTest
    @CsvSource({"'', 2, 6, 18.453822, 24.212845", "'19,23,22', 1.813529, 9, 18.825170, 23.841497"})
    void own_lengths_move_what_was_published(String own, double scale, int degrees, double low, double high)
            throws JsonProcessingException {
        JsonNode answer = own.isEmpty() ? json("--prior", "16,21,28") : json("--prior", "16,21,28", "--own", own);

        assertThat(answer.get("centre").doubleValue()).isCloseTo(64 / 3.0, within(1e-9));
        assertThat(answer.get("scale").doubleValue()).isCloseTo(scale, within(5e-7));
        assertThat(answer.get("df").intValue()).isEqualTo(degrees);
        assertThat(answer.at("/interval80/0").doubleValue()).isCloseTo(low, within(5e-7));
        assertThat(answer.at("/interval80/1").doubleValue()).isCloseTo(high, within(5e-7));
        assertThat(answer.get("warnings")).isEmpty();
        assertThat(answer.get("assumed")).isEmpty();
    }

    @Test
    void weeks_are_taken_where_they_are_named() throws JsonProcessingException {
        assertThat(json("--prior", "2wk,3wk,4wk").get("centre").doubleValue()).isEqualTo(21);
    }

    @Test
    void what_stands_out_is_named_and_counted() {
        Printed printed = run("--prior", "16,21,28", "--own", "20,22,40,21,23");

        assertThat(printed.code()).isEqualTo(ExitCode.DONE);
        assertThat(printed.err())
                .isEqualTo("! Far from all the others: 40 days. Counted all the same; look whether it is right.\n");
        assertThat(printed.out()).contains("centre: ");
    }

    @Test
    void what_stands_out_is_a_warning_of_the_document_too() throws JsonProcessingException {
        JsonNode answer = json("--prior", "16,21,28", "--own", "40");

        assertThat(answer.at("/warnings/0/code").textValue()).isEqualTo("outlier");
    }

    @Test
    void ten_thousand_lengths_are_taken() throws JsonProcessingException {
        JsonNode answer = json("--prior", "16,21,28", "--own", String.join(",", Collections.nCopies(10_000, "25")));

        assertThat(answer.get("centre").doubleValue()).isCloseTo(25, within(0.001));
        assertThat(answer.get("df").intValue()).isEqualTo(10_006);
    }

    @Test
    void a_length_published_as_one_number_leaves_no_doubt() throws JsonProcessingException {
        JsonNode answer = json("--prior", "5");

        assertThat(answer.get("scale").doubleValue()).isZero();
        assertThat(answer.at("/interval80/0").doubleValue()).isEqualTo(5);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--own 5 | No published length is given.",
                "--prior 16,21 | neither one number of days nor three",
                "--prior 28,21,16 | is not in order",
                "--prior NaN | 'NaN' is no number of days.",
                "--prior NaN,21,28 | 'NaN' is no number of days.",
                "--prior 16,Infinity,28 | is no number of days",
                "--prior=-1,2,3 | '-1' is no number of days. Write it as 21, 21.5 or 3wk.",
                "--prior 1,2,1e9 | '1e9' is no number of days.",
                "--prior 1,2,999999 | '999999' is no number of days.",
                "--prior 16,21,28 --own 19,,22 | '' is no number of days.",
                "--prior 16,21,28 --own -3 | '-3' is no number of days.",
                "--prior 16,21,28 --own 3;4 | '3;4' is no number of days.",
                "--prior 16,21,28 --own 600wk | '600wk' is no number of days."
            })
    void what_cannot_be_read_is_misuse(String line, String says) {
        Printed printed = run(line.split(" ", -1));

        assertThat(printed.code()).isEqualTo(ExitCode.USED_WRONGLY);
        assertThat(printed.out()).isEmpty();
        assertThat(printed.err()).contains(says);
    }
}
