// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.cli.Terminal.Printed;

/** The cold of the ground foretold on the command line; the wave of mean 8 and amplitude 14 was worked out in numpy. */
class SoilCommandTest {
    private static final String INLAND = months(8, 14);

    private final Terminal terminal = Terminal.withoutShelf();

    private static String months(double mean, double amplitude) {
        return IntStream.range(0, 12)
                .mapToObj(month -> Double.toString(Math.rint(1e3
                                * (mean - amplitude * Math.cos(2 * Math.PI * ((month + 0.5) / 12 - 20.5 / 365.0))))
                        / 1e3))
                .collect(Collectors.joining(","));
    }

    private Printed run(String... words) {
        return terminal.run(
                Stream.concat(Stream.of("reckon", "soil"), Stream.of(words)).toArray(String[]::new));
    }

    private JsonNode json(String... words) throws JsonProcessingException {
        Printed printed =
                run(Stream.concat(Stream.of(words), Stream.of("--json")).toArray(String[]::new));
        assertThat(printed.code()).as(printed.err()).isEqualTo(ExitCode.DONE);
        return new ObjectMapper().readTree(printed.out());
    }

    @Test
    void aColdInland() throws JsonProcessingException {
        JsonNode answer = json("--monthly=" + INLAND, "--depth", "15", "--limits", "1.7,7.2");
        assertThat(answer.get("mean").doubleValue()).isCloseTo(8, within(1e-3));
        assertThat(answer.get("amplitude").doubleValue()).isCloseTo(14, within(1e-3));
        assertThat(answer.get("minimumDay").doubleValue()).isCloseTo(20.5, within(1e-2));
        assertThat(answer.get("dampingDepth").doubleValue()).isCloseTo(2.24034, within(5e-6));
        assertThat(answer.at("/atDepth/depth").doubleValue()).isEqualTo(0.15);
        assertThat(answer.at("/atDepth/minimum").doubleValue()).isCloseTo(-5.0933, within(1e-3));
        assertThat(answer.at("/atDepth/lagDays").doubleValue()).isCloseTo(3.889, within(1e-3));
        assertThat(answer.get("stays")).hasSize(2);
        double days = DoubleStream.of(
                        answer.at("/daysAtOrBelow/1/days").doubleValue(),
                        -answer.at("/daysAtOrBelow/0/days").doubleValue())
                .sum();
        assertThat(days).isCloseTo(51.218, within(1e-2));
        assertThat(answer.at("/frost/chance").doubleValue()).isGreaterThan(.9);
        assertThat(answer.at("/frost/safeDepth").doubleValue()).isGreaterThan(1.2537);
        assertThat(answer.get("assumed")).hasSize(2);
    }

    @Test
    void inPlainLines() {
        assertThat(run("--monthly=" + INLAND, "--depth", "15").out())
                .contains("air: mean 8.0 C, -6.0 to 22.0 C, coldest about 21 Jan\n")
                .contains("at 15 cm: -5.1 to 21.1 C, coldest about 25 Jan, 4 days later\n")
                .contains("chance that it freezes there in a winter: ")
                .contains("freezes in one winter of twenty at most from ");
        assertThat(run("--monthly=" + months(-6, 3), "--depth", "15").out())
                .contains("from 2 to 9 C: never")
                .contains("more than 99 %")
                .contains("freezes at any depth");
        assertThat(run("--monthly=" + months(6, .5), "--depth", "15").out())
                .contains("from 2 to 9 C: all year")
                .contains("chance that it freezes there in a winter: less than 1 %")
                .contains("freezes in one winter of twenty at most, at any depth");
    }

    @Test
    void mulchKeepsItWarmer() throws JsonProcessingException {
        String straw = "10cm:0.1";
        JsonNode under = json("--monthly=" + INLAND, "--depth", "15", "--mulch", straw);
        assertThat(under.at("/atDepth/minimum").doubleValue()).isGreaterThan(-3);
        assertThat(under.at("/frost/chance").doubleValue())
                .isLessThan(json("--monthly=" + INLAND, "--depth", "15")
                        .at("/frost/chance")
                        .doubleValue());
        assertThat(under.get("assumed")).hasSize(3);
        JsonNode known = json(
                "--monthly=" + INLAND,
                "--depth",
                "0",
                "--mulch",
                straw,
                "--soil-conductivity",
                "1.4",
                "--diffusivity",
                "0.45");
        assertThat(known.at("/atDepth/amplitude").doubleValue()).isCloseTo(14 * .56031, within(1e-3));
        assertThat(known.at("/atDepth/lagDays").doubleValue()).isCloseTo(21.960, within(1e-3));
        assertThat(known.get("assumed")).hasSize(1);
    }

    @Test
    void theEndOfTheYearIsNoEnd() throws JsonProcessingException {
        String late = Stream.concat(
                        List.of(INLAND.split(",", -1)).subList(1, 12).stream(), Stream.of(INLAND.split(",", -1)[0]))
                .collect(Collectors.joining(","));
        assertThat(json("--monthly=" + late, "--depth", "60")
                        .at("/atDepth/lagDays")
                        .doubleValue())
                .isBetween(10.0, 20.0);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "--depth 15 | It is not said how warm the months are. Write --monthly and twelve means.",
                "--monthly 1,2 --depth 15 | '1,2' are 2 months. Write twelve means, from January on.",
                "--monthly 1,1,1,1,1,1,1,1,1,1,1,1 | It is not said how deep. Write --depth 15.",
                "--monthly 1,1,1,1,1,1,1,1,1,1,1,1 --depth deep | 'deep' is no length.",
                "--monthly 1,1,1,1,1,1,1,1,1,1,1,1 --depth 1 --mulch straw | 'straw' is no mulch. Write its thickness and its conductivity, as 10cm:0.1.",
                "--monthly 1,1,1,1,1,1,1,1,1,1,1,1 --depth 1 --mulch 3:0 | '0' is no conductivity. Write a number above 0.",
                "--monthly 1,1,1,1,1,1,1,1,1,1,1,1 --depth 1 --limits 9,2 | '9,2' are not two temperatures, the lower first. Write 2,9.",
                "--monthly 1,1,1,1,1,1,1,1,1,1,1,1 --depth 1 --diffusivity 0 | '0' is no diffusivity. Write a number above 0.",
            })
    void anOptionUsedWronglyIsSaid(String options, String sentence) {
        Printed printed = run(options.split(" ", -1));
        assertThat(printed.code()).isEqualTo(ExitCode.USED_WRONGLY);
        assertThat(printed.err()).startsWith(sentence);
    }
}
