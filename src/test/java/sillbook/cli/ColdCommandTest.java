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
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.cli.Terminal.Printed;

/** The cold of a file worked out on the command line, without a journal. The open weather's source stands beside it. */
class ColdCommandTest {
    private static final String DAYS = "src/test/resources/sillbook/reckon/weather/seattle-weather.csv";
    private static final String HOURS = "src/test/resources/sillbook/reckon/weather/seattle-weather-hourly-normals.csv";

    @TempDir
    private Path folder;

    private final Terminal terminal = Terminal.withoutShelf();

    private Printed run(String... words) {
        return terminal.run(
                Stream.concat(Stream.of("reckon", "cold"), Stream.of(words)).toArray(String[]::new));
    }

    private JsonNode json(String... words) throws JsonProcessingException {
        Printed printed =
                run(Stream.concat(Stream.of(words), Stream.of("--json")).toArray(String[]::new));
        assertThat(printed.code()).as(printed.err()).isEqualTo(ExitCode.DONE);
        return new ObjectMapper().readTree(printed.out());
    }

    private String file(String... lines) throws IOException {
        return Files.write(folder.resolve("cellar.csv"), Stream.of(lines).toList())
                .toString();
    }

    @Test
    void theOpenWinterAsWorkedOutElsewhere() {
        assertThat(run(DAYS, "--from", "2012-10-01", "--to", "2013-03-31").out())
                .contains("182 readings over 4368.00 hours")
                .contains("effective: 3204.99 hours, 19.08 weeks")
                .contains("strict count, above 0 and up to 9 C: 2749.43 hours")
                .contains("14 weeks reached on Wed 13 Feb 2013");
    }

    @Test
    void ofDaysThatAreNotThereNothingIsBridged() throws IOException {
        String days = file("day,low,high", "2026-10-01,4,8", "2026-10-03,4,8");
        assertThat(run(days).out()).contains("\nnot accounted for: 24.00 hours\n");
        JsonNode answer = json(days);
        assertThat(answer.get("unaccountedHours").doubleValue()).isEqualTo(24);
        assertThat(answer.get("effectiveHoursBridged").isNull()).isTrue();
    }

    @Test
    void theOpenHours() throws JsonProcessingException {
        JsonNode answer = json(HOURS, "--from", "2010-10-01", "--to", "2010-12-31T23:00");
        assertThat(answer.get("readings").intValue()).isEqualTo(2208);
        assertThat(answer.get("readingCount").intValue()).isEqualTo(1481);
        assertThat(answer.get("effectiveHours").doubleValue()).isCloseTo(1809.597314, within(1e-6));
        assertThat(answer.get("unaccountedHours").doubleValue()).isZero();
        assertThat(answer.get("reached").isNull()).isTrue();
        assertThat(answer.at("/assumed/0").textValue()).isEqualTo("temperatures in C");
        assertThat(answer.at("/assumed/1").textValue()).isEqualTo("times in UTC");
    }

    @Test
    void theStrictCountIsTheSumWhereItIsAskedFor() throws JsonProcessingException {
        JsonNode answer = json(DAYS, "--from", "2012-10-01", "--to", "2013-03-31", "--profile", "count");
        assertThat(answer.get("effectiveHours").doubleValue()).isCloseTo(2749.4291, within(1e-4));
    }

    @Test
    void degreesFahrenheitAreToldByTheNameOfTheColumn() throws IOException {
        JsonNode answer =
                json(file("When,Temp (°F)", "2026-10-01 00:00,41", "2026-10-01T12:00,41", "2026-10-02 00:00,"));
        assertThat(answer.get("effectiveHours").doubleValue()).isEqualTo(12, within(1e-9));
        assertThat(answer.at("/warnings/0/code").textValue()).isEqualTo("no-value");
        assertThat(answer.get("assumed")).hasSize(1);
    }

    /** An hour apart, in degrees Fahrenheit, with a heading of its own, as none of our tables has. */
    @Test
    void aThermometersFileIsReadAsItWouldBeImported() throws IOException {
        StringBuilder lines = new StringBuilder("LOG-2\nDate;Time;Temp, F\n");
        for (int hour = 0; hour < 24; hour++) {
            lines.append("13.11.2026;%02d:00;41,0\n".formatted(hour));
        }
        lines.append("14.11.2026;00:00;41,0\n14.11.2026;01:00;\n14.11.2026;02:00;185,0\nBattery low\n");
        String file = file(lines.toString().split("\n", -1));
        Printed printed = run(file, "--zone", "+01:00", "--from", "2026-11-13", "--to", "2026-11-13");
        assertThat(printed.out()).startsWith("25 readings over 24.00 hours\neffective: 24.00 hours, 0.14 weeks\n");
        assertThat(printed.err()).isEqualTo("""
                        ! Left out, without a temperature: 1 line.
                        ! Left out, as it can hardly be true: 1 reading, from line 29 on.
                        ! Left out, as it cannot be read: 1 line, from line 30 on.
                        """);
    }

    @Test
    void whatIsSaidOfAFileGoesBeforeWhatItsColumnsAreCalled() throws IOException {
        String file = file("date,low,high", "03/11/2026 20:00,5,8", "03/11/2026 21:00,5,8", "04/11/2026 00:00,5,8");
        assertThat(run(file, "--dates", "dmy", "--column", "2").out()).startsWith("3 readings over 4.00 hours\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"V06.csv", "V13d.csv", "V14c.csv", "V22c.csv", "V23.txt"})
    void whatIsImportedIsReckonedWith(String fixture) {
        Path file = Path.of("src/test/resources/sillbook/exchange/logger", fixture);
        assertThat(run(file.toString(), "--from", "1990-01-01").out()).contains("readings over");
    }

    @Test
    void aFileThatIsNotThereIsSaid() {
        assertThat(run("nowhere.csv").err()).isEqualTo("nowhere.csv: There is no such file.\n");
    }

    @Test
    void aMomentCutsWhereNothingWasRead() throws IOException {
        String even = file("time,celsius", "2026-10-01 00:00,5", "2026-10-01 10:00,5");
        assertThat(json(even, "--from", "2026-10-01T02:00", "--to", "2026-10-01T05:00")
                        .get("hours")
                        .doubleValue())
                .isEqualTo(3);
    }

    @Test
    void whatIsTooWarmForLongIsSaid() throws IOException {
        assertThat(run(file(
                                "time,t",
                                "2026-10-01 00:00,15",
                                "2026-10-01 12:00,15",
                                "2026-10-02 00:00,15",
                                "2026-10-02 06:00,15"))
                        .out())
                .contains("warmer than 13 C from Thu 1 Oct 2026 00:00 to Fri 2 Oct 2026 06:00, up to 15 C");
    }

    @Test
    void spansBoundTheCold() throws IOException {
        String spans = file(
                "From,To,Lowest,Highest",
                "2026-10-01,2026-10-08,3,8",
                "2026-10-08,2026-10-15,1,8",
                "2026-10-16,2026-10-23 12:00,3,8");
        assertThat(run(spans, "--need", "2").out()).isEqualTo("""
                        3 spans over 540.00 hours
                        effective: at least 432.00 hours, 2.57 weeks; at most 516.00 hours, 3.07 weeks
                        not accounted for: 24.00 hours
                        2 weeks reached on Thu 15 Oct 2026 at the earliest, for certain on Mon 19 Oct 2026
                        """);
        assertThat(run(spans, "--need", "3").out()).contains("at the earliest, not for certain\n");
        assertThat(run(spans, "--need", "4").out()).contains("4 weeks cannot have been reached\n");
        JsonNode cut = json(spans, "--to", "2026-10-09", "--profile", "count");
        assertThat(cut.get("spans").intValue()).isEqualTo(2);
        assertThat(cut.get("effectiveHoursLeast").doubleValue()).isEqualTo(9 * 24);
        assertThat(cut.get("effectiveWeeksMost").doubleValue()).isEqualTo(9 / 7.0, within(1e-9));
        assertThat(cut.get("reachedFirst").isNull()).isTrue();
        assertThat(cut.get("assumed")).hasSize(3);
    }

    @Test
    void aStretchWithoutATemperatureIsSaidToBeEmpty() {
        Printed printed = run(DAYS, "--from", "2030-10-01");
        assertThat(printed.code()).isEqualTo(ExitCode.DONE);
        assertThat(printed.err()).contains("There is no temperature in that stretch.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "day,lowest,highest;1 oct,3,5 | Row 2: '1 oct' is no day. Write it as 2026-10-01.",
                "day,lowest,highest;2026-10-01,3,cold | Row 2: 'cold' is no temperature. Write a number, as 4.5.",
                "day,lowest,highest;2026-10-01,5,3 | Row 2: the lowest, 5, is above the highest, 3.",
                "day,lowest,highest;2026-10-01,3,5;2026-10-01,3,5 | Row 3: 2026-10-01 stands in it twice.",
                "from,to,low,high;2026-10-08,2026-10-01,3,8 | Row 2: it ends before it begins.",
                "from,to,low,high;2026-10-01,2026-10-08,3,8;2026-10-07,2026-10-09,3,8 | Row 3: it overlaps a span above it.",
                "from,to,low,high;2026-10-01,then,3,8 | Row 2: 'then' is no day and no moment. Write it as 2026-10-01.",
                "from,low,high;2026-10-01,3,8 | There is no column of where they end. There are from, low and high; name one end, read, to or until.",
                "time,date,low,high;x,y,5,6 | The columns time and date could both be meant. Leave one out.",
                "day,highest;2026-10-01,8 | There is no column of the lowest. There are day and highest; name one low, lowest, min, minimum, mintemp, tempmin or tmin.",
                "time,temp;01/02/2026 08:00,5 | Every date of it can be read as day.month.year and as month.day.year. Say which: --dates dmy or --dates mdy.",
                "time,a,b;2026-10-01 08:00,4.1,5.2 | Each of its columns 2 \"a\" and 3 \"b\" may be the temperature. Say which: --column and its number.",
                "box,time,t;A,2026-10-01 08:00,4.1;B,2026-10-01 08:00,5.1 | It has readings of 2 devices: A and B. Say whose: --device and its name.",
            })
    void aFileThatCannotBeReadIsToldWhereAndWhy(String lines, String sentence) throws IOException {
        Printed printed = run(file(lines.split(";", -1)));
        assertThat(printed.code()).isEqualTo(ExitCode.COULD_NOT);
        assertThat(printed.err()).isEqualTo(sentence + "\n");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "--profile hours | 'hours' is no way to count cold. Write graded or count.",
                "--from 2012-10-01T08:00 | '2012-10-01T08:00' is no day, and the file has days. Write 2026-10-01.",
                "--need much | 'much' is no number of weeks.",
            })
    void anOptionUsedWronglyIsSaid(String options, String sentence) {
        Printed printed = run(Stream.concat(Stream.of(DAYS), Stream.of(options.split(" ", -1)))
                .toArray(String[]::new));
        assertThat(printed.code()).isEqualTo(ExitCode.USED_WRONGLY);
        assertThat(printed.err()).startsWith(sentence);
    }

    @Test
    void anEndThatIsNoMomentIsSaid() {
        assertThat(run(HOURS, "--to", "soon").err())
                .isEqualTo("'soon' is no day and no moment. Write 2026-10-01, or 2026-10-01T08:00.\n");
    }
}
