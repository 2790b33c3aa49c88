// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.cli.Terminal.Printed;

/** Degree-days added up on the command line, without a journal. */
class HeatCommandTest {
    private static final String DAYS = "src/test/resources/sillbook/reckon/weather/seattle-weather.csv";
    private static final String HOURS = "src/test/resources/sillbook/reckon/weather/seattle-weather-hourly-normals.csv";

    private final Terminal terminal = Terminal.withoutShelf();

    private Printed run(String... words) {
        return runOn(DAYS, words);
    }

    private Printed runOn(String file, String... words) {
        return terminal.run(Stream.concat(Stream.of("reckon", "heat", file), Stream.of(words))
                .toArray(String[]::new));
    }

    /** Worked out in numpy from the open daily file. */
    @Test
    void theDayASumIsReached() throws JsonProcessingException {
        Printed printed = run("--base", "0", "--need", "350", "--from", "2013-02-01", "--json");
        JsonNode answer = new ObjectMapper().readTree(printed.out());
        assertThat(answer.get("day").textValue()).isEqualTo("2013-03-19");
        assertThat(answer.get("sum").doubleValue()).isCloseTo(352.55, within(0.005));
        assertThat(answer.get("share").doubleValue()).isCloseTo(.648276, within(1e-6));
        assertThat(answer.at("/assumed/0").textValue()).isEqualTo("temperatures in C");
    }

    /** Worked out in numpy from the open hourly file, straight from one reading to the next. */
    @Test
    void theDayASumIsReachedByReadings() throws JsonProcessingException {
        Printed printed = runOn(HOURS, "--need", "150", "--from", "2010-02-01", "--json");
        JsonNode answer = new ObjectMapper().readTree(printed.out());
        assertThat(answer.get("day").textValue()).isEqualTo("2010-03-31");
        assertThat(answer.get("sum").doubleValue()).isCloseTo(152.605027281746, within(1e-9));
        assertThat(answer.get("share").doubleValue()).isCloseTo(.33346849934004114, within(1e-9));
        assertThat(answer.at("/assumed/1").textValue()).isEqualTo("times in UTC");
    }

    @Test
    void whatNothingIsKnownOfIsSaid(@TempDir Path home) throws IOException {
        Path days = Files.writeString(
                home.resolve("days.csv"),
                "day,low,high\n2026-10-01,10,14\n2026-10-02,8,10\n2026-10-04,8,12\n2026-10-07,8,12\n");
        assertThat(runOn(days.toString(), "--base", "0", "--need", "30", "--from", "2026-10-02")
                        .out())
                .as("till the day it is reached")
                .isEqualTo("30 degree-days above 0 C not reached\nnot accounted for: 72.00 hours\n");
        assertThat(runOn(days.toString(), "--base", "0", "--need", "15", "--from", "2026-10-02", "--json")
                        .out())
                .contains("\"unaccountedHours\": 24");
        Path moments = Files.writeString(
                home.resolve("box.csv"),
                "time,C\n2026-10-01T00:00Z,10\n2026-10-01T10:00Z,10\n2026-10-02T10:00Z,10\n2026-10-02T20:00Z,10\n");
        assertThat(runOn(moments.toString(), "--base", "0", "--need", "30", "--from", "2026-10-01")
                        .out())
                .endsWith("not accounted for: 24.00 hours\n");
    }

    @Test
    void spansAreTooLongForDays() {
        Printed printed = runOn("docs/how-to/lists/fridge-spans.csv", "--need", "150", "--from", "2026-10-01");
        assertThat(printed.code()).isEqualTo(ExitCode.COULD_NOT);
        assertThat(printed.err())
                .isEqualTo("It has spans of several days, and degree-days are added up by the day. Give it days with"
                        + " their lowest and highest, or the file of a thermometer.\n");
    }

    @Test
    void aBaseMayBeSaidInFahrenheit() {
        assertThat(run("--base", "32F", "--need", "350", "--from", "2013-02-01").out())
                .startsWith("350 degree-days above 0 C reached on Tue 19 Mar 2013\n");
        assertThat(run("--need", "9000", "--from", "2015-02-01").out())
                .isEqualTo("9000 degree-days above 4.4 C not reached\n");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "--from 2013-02-01 | It is not said how many degree-days are needed. Write --need.",
                "--need 350 | It is not said from which day on. Write --from 2027-02-01.",
                "--need 0 --from 2013-02-01 | A need of 0 degree-days is none. Write a number above 0.",
                "--need much --from 2013-02-01 | 'much' is no number. Write it as 350 or 4.5.",
                "--need 350 --from 2013-02-01 --base warm | 'warm' is no temperature.",
            })
    void anOptionUsedWronglyIsSaid(String options, String sentence) {
        Printed printed = run(options.split(" ", -1));
        assertThat(printed.code()).isEqualTo(ExitCode.USED_WRONGLY);
        assertThat(printed.err()).startsWith(sentence);
    }
}
