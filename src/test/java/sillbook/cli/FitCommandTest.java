// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.cli.Terminal.Printed;

/** Bulbs in a pot on the command line; what is reckoned is held to its sources where it is reckoned. */
class FitCommandTest {
    private final Terminal terminal = Terminal.withoutShelf();

    private Printed run(String... words) {
        return terminal.run(
                Stream.concat(Stream.of("reckon", "fit"), Stream.of(words)).toArray(String[]::new));
    }

    private JsonNode json(String... words) throws JsonProcessingException {
        Printed printed =
                run(Stream.concat(Stream.of(words), Stream.of("--json")).toArray(String[]::new));
        assertThat(printed.code()).as(printed.err()).isEqualTo(ExitCode.DONE);
        return new ObjectMapper().readTree(printed.out());
    }

    @Test
    void likeBulbsInAPotOfAWidth() throws JsonProcessingException {
        JsonNode answer = json("--pot", "15", "--bulb", "4");
        assertThat(answer.get("count").intValue()).isEqualTo(7);
        assertThat(answer.get("ratio").doubleValue()).isCloseTo(3.222222, within(5e-7));
        assertThat(answer.get("ring").intValue()).isEqualTo(6);
        assertThat(answer.get("positions"))
                .hasSize(7)
                .allSatisfy(place -> assertThat(place).hasSize(2));
        assertThat(answer.get("proven").booleanValue()).isTrue();
        assertThat(answer.get("upperBound").intValue()).isEqualTo(7);
        assertThat(answer.get("ceiling").intValue()).isEqualTo(9);
        assertThat(answer.get("volumeLitres").isNull()).isTrue();
        assertThat(answer.get("mixLitres").isNull()).isTrue();
        assertThat(answer.get("below").isNull()).isTrue();
        assertThat(answer.get("apart").isNull()).isTrue();
        assertThat(answer.at("/suggested/basis").textValue()).isEqualTo("half-surface");
        assertThat(answer.get("assumed")).hasSize(2);
        assertThat(json("--pot", "15", "--bulb", "4", "--gap", "0", "--wall", "0")
                        .get("assumed"))
                .isEmpty();
    }

    @Test
    void whatIsPublishedComesFirst() throws JsonProcessingException {
        JsonNode answer = json("--pot", "6in", "--grade", "12", "--kind", "tulip");
        assertThat(answer.at("/suggested/count").intValue()).isEqualTo(6);
        assertThat(answer.at("/suggested/basis").textValue()).isEqualTo("published");
        assertThat(answer.get("published")).hasSize(4);
        assertThat(answer.at("/published/0/low").intValue()).isEqualTo(5);
        assertThat(answer.at("/published/0/source").textValue()).startsWith("Iowa State");
        assertThat(run("--pot", "6in", "--grade", "12", "--kind", "tulip").out())
                .startsWith("suggested: 6, as published for a pot of this width\n")
                .contains("published for 6 in: 5 to 7, Iowa State");
        assertThat(run("--pot", "19", "--grade", "12").out()).startsWith("suggested: 12, which cover half the surface");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12/14  | 13",
                "14-16  | 15",
                "16 – 17| 16.5",
                "12+    | 12",
                "12     | 12",
                "12.5cm | 12.5",
                "14/16x3,12+x1 | 15"
            })
    void aGradeAsAPacketPrintsIt(String grade, double girth) throws JsonProcessingException {
        JsonNode answer = json("--pot", "19", "--grade", grade);
        JsonNode bulb = answer.has("bulbs") ? answer.at("/bulbs/0") : answer.get("bulb");
        assertThat(bulb.doubleValue()).isCloseTo(girth / Math.PI, within(1e-9));
    }

    @Test
    void whatIsSuggestedFits() {
        assertThat(run("--pot", "9", "--bulb", "8.5").out()).startsWith("suggested: none, for not one fits\n");
        assertThat(run("--pot", "9", "--bulb", "12").out()).startsWith("suggested: none, for not one fits\n");
        assertThat(run("--pot", "15", "--kind", "tulip", "--bulb", "12").out())
                .startsWith("suggested: 1, of the 6 published for a pot of this width: no more are known to fit\n");
        assertThat(run("--pot", "15", "--bulb", "4", "--count", "8").out())
                .startsWith("suggested: 7, of the 8 you mean to set: no more are known to fit\n");
        assertThat(run("--pot", "15", "--bulb", "4", "--gap", "2").out())
                .startsWith("suggested: 4, of the 7 that would cover half the surface (Nebraska Extension):"
                        + " no more are known to fit\n");
    }

    @Test
    void asManyAsAreToBeSet() throws JsonProcessingException {
        JsonNode answer = json("--pot", "19", "--grade", "12", "--count", "5");
        assertThat(answer.get("positions")).hasSize(5);
        assertThat(answer.get("apart").doubleValue()).isCloseTo(4.515, within(1e-3));
        assertThat(answer.at("/suggested/basis").textValue()).isEqualTo("own");
        assertThat(run("--pot", "19", "--grade", "12", "--count", "5").out())
                .contains("5 stand 4.5 cm apart, spread to the wall\n");
        JsonNode crowd = json("--pot", "15", "--grade", "12", "--count", "10000");
        assertThat(crowd.at("/warnings/0/code").textValue()).isEqualTo("too-many");
        assertThat(crowd.at("/warnings/0/says").textValue()).startsWith("10 000 are not known to fit 0.5 cm apart");
        assertThat(crowd.get("apart").isNull()).isTrue();
        assertThat(crowd.get("positions").size()).isEqualTo(crowd.get("count").intValue());
    }

    /** 1872.9 cm3 to the brim; the cone up to 1.3 cm below the rim holds 1648.8, worked out by hand. */
    @Test
    void whatAPotHolds() throws JsonProcessingException {
        JsonNode answer = json("--pot", "15x11x14", "--bulb", "4", "--mix", "3 loam, 1 peat");
        assertThat(answer.get("assumed")).extracting(JsonNode::textValue).contains("loose mix that settles by a fifth");
        double bulbs = answer.get("count").intValue() * Math.PI * 64 / 6;
        double mix = answer.get("mixLitres").doubleValue();
        assertThat(answer.get("volumeLitres").doubleValue()).isCloseTo(1.8729128, within(1e-7));
        assertThat(mix).isCloseTo((1648.83 - bulbs) / 1000, within(1e-4));
        assertThat(answer.get("across").doubleValue()).isBetween(13.9, 14.2);
        assertThat(answer.get("under").doubleValue()).isCloseTo(8.7, within(1e-9));
        assertThat(answer.at("/parts/0/material").textValue()).isEqualTo("loam");
        assertThat(answer.at("/parts/0/looseLitres").doubleValue()).isCloseTo(mix * 1.2 * .75, within(1e-9));
        assertThat(json("--pot", "15", "--bulb", "4", "--litres", "1.5")
                        .get("volumeLitres")
                        .doubleValue())
                .isEqualTo(1.5);
        assertThat(json("--pot", "6in", "--shape", "pan", "--bulb", "4")
                        .get("volumeLitres")
                        .doubleValue())
                .isBetween(1.0, 2.0);
        assertThat(run("--pot", "15x11x14", "--bulb", "4", "--mix", "3 loam, 1 peat")
                        .out())
                .contains("volume: 1.87 L to the brim; potting mix beside the bulbs: ")
                .contains("potting mix under the bulbs: 8.7 cm\n")
                .contains("to put together, loose: ");
    }

    @Test
    void aShallowPotIsWarnedOf() {
        assertThat(run("--pot", "15x11x7", "--bulb", "4").err())
                .contains("Only 1.7 cm of potting mix are left under the bulbs");
        assertThat(run("--pot", "15x11x4", "--bulb", "4").err()).contains("The pot is not as high as its bulbs.");
    }

    @Test
    void aSecondLayer() throws JsonProcessingException {
        JsonNode answer = json("--pot", "20x16x22", "--grade", "9", "--below", "14");
        assertThat(answer.get("assumed")).extracting(JsonNode::textValue).contains("2.5 cm between two layers");
        assertThat(answer.at("/below/count").intValue()).isPositive();
        assertThat(answer.at("/below/bulb").doubleValue()).isCloseTo(14 / Math.PI, within(1e-9));
        assertThat(answer.at("/below/positions").size())
                .isEqualTo(answer.at("/below/count").intValue());
        assertThat(answer.at("/below/across").doubleValue())
                .isLessThan(answer.get("across").doubleValue());
        assertThat(run("--pot", "20x16x22", "--grade", "9", "--below", "14").out())
                .contains("second layer: ");
        assertThat(run("--pot", "20x16x8", "--grade", "9", "--below", "14").err())
                .contains("The pot is too shallow or too narrow for a second layer.");
    }

    @Test
    void bulbsOfSeveralSizes() throws JsonProcessingException {
        JsonNode answer = json("--pot", "19", "--grade", "18x3,9x4", "--wall", "0.3");
        assertThat(answer.get("fits").booleanValue()).isTrue();
        assertThat(answer.get("positions")).hasSize(7);
        assertThat(answer.at("/bulbs/0").doubleValue()).isCloseTo(5.730, within(1e-3));
        JsonNode none = json("--pot", "9", "--grade", "18x3,9x4");
        assertThat(none.get("fits").booleanValue()).isFalse();
        assertThat(none.get("proven").booleanValue()).isTrue();
        assertThat(none.get("positions")).isEmpty();
        assertThat(run("--pot", "19", "--grade", "18x3,9x4", "--wall", "0.3").out())
                .startsWith("7 bulbs of several sizes: they fit, 0.5 cm apart and 0.3 cm from the wall\n")
                .contains("  5.7 cm\n");
        assertThat(run("--pot", "9", "--grade", "18x3,9x4").out())
                .startsWith("7 bulbs of several sizes: they cannot fit");
        assertThat(run("--pot", "12", "--bulb", "4x7", "--gap", "0", "--wall", "0")
                        .code())
                .isEqualTo(ExitCode.DONE);
        assertThat(run("--pot", "12.1", "--bulb", "4x8", "--gap", "0", "--wall", "0"))
                .satisfies(printed -> assertThat(printed.out()).contains("no places found"))
                .satisfies(printed -> assertThat(printed.err()).contains("which proves nothing"));
    }

    @Test
    void aBulbWiderThanThePot() throws JsonProcessingException {
        JsonNode answer = json("--pot", "9", "--bulb", "12");
        assertThat(answer.get("count").intValue()).isZero();
        assertThat(answer.at("/suggested/count").intValue()).isZero();
        assertThat(answer.at("/warnings/0/code").textValue()).isEqualTo("too-narrow");
        assertThat(run("--pot", "9", "--bulb", "12").err())
                .contains("A bulb of 12 cm does not fit a pot that is 9 cm across where it sits");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "--grade 12 | It is not said how wide the pot is. Write --pot 15.",
                "--pot 15 | The bulbs want their grade or their width, one of them.",
                "--pot 15 --grade 12 --bulb 4 | The bulbs want their grade or their width, one of them.",
                "--pot 0 --grade 12 | '0' is no width of a pot. Write a length above 0.",
                "--pot=-15 --grade 12 | '-15' is no length.",
                "--pot NaN --grade 12 | 'NaN' is no length.",
                "--pot 15 --grade NaN | 'NaN' is no length.",
                "--pot 15 --grade 0 | '0' is no size of a bulb.",
                "--pot 15 --grade 12 --gap=-1 | '-1' is no length.",
                "--pot 15x11 --grade 12 | '15x11' is no pot. Write how wide it is, --pot 15, or rim, base and height",
                "--pot 15x11x14 --shape pan --grade 12 | A pot of three sizes has its shape.",
                "--pot 15 --shape bucket --grade 12 | 'bucket' is no shape. Write standard, azalea or pan.",
                "--pot 15 --litres 0 --grade 12 | '0' litres are no pot.",
                "--pot 15 --grade 12 --count 0 | '0' is no number of bulbs.",
                "--pot 15 --grade 12 --count many | 'many' is no number of bulbs.",
                "--pot 15 --grade 12x99 | Of several sizes 1 to 60 bulbs are set.",
                "--pot 15 --grade 12x0 | Of several sizes 1 to 60 bulbs are set.",
                "--pot 15 --grade 12x3 --count 3 | Several sizes have their numbers, and lie in one layer.",
                "--pot -15 --grade 12 | '-15' is no length.",
                "--pot NaN --grade 12 | 'NaN' is no length.",
                "--pot 15 --bulb Infinity | 'Infinity' is no length.",
                "--pot 15x11x-3 --bulb 4 | '-3' is no length.",
                "--pot 15 --bulb 4 --count -3 | '-3' is no number of bulbs.",
                "--pot 15 --bulb 4 --wall -1 | '-1' is no length.",
                "--pot 15 --bulb 4 --litres -1 | '-1' litres are no pot.",
                "--pot 15 --bulb 4x10000 | '4x10000' is no length.",
                "--pot 15 --bulb 4x61 | Of several sizes 1 to 60 bulbs are set.",
                "--pot 15 --bulb 4x0 | Of several sizes 1 to 60 bulbs are set.",
                "--pot 15x11x14 --bulb 4 --below NaN | 'NaN' is no length.",
                "--pot 15 --grade 12 --below 14 | A second layer wants the pot's height.",
                "--pot 15 --grade 12 --mix 3_loam | '3_loam' is no part of a mix.",
                "--pot 15 --grade 12 --kind brick | ",
            })
    void anOptionUsedWronglyIsSaid(String options, String sentence) {
        Printed printed = run(options.split(" ", -1));
        assertThat(printed.code()).isEqualTo(ExitCode.USED_WRONGLY);
        assertThat(printed.err()).startsWith(sentence == null ? "'brick'" : sentence);
        assertThat(printed.out()).isEmpty();
    }

    @Test
    void howMuchMixDependsOnThePot() {
        assertThat(run("--pot", "15", "--grade", "12", "--mix", "3 loam").err())
                .startsWith("How much mix it takes depends on the pot.");
    }

    @Test
    void bulbsWiderThanThePot() throws JsonProcessingException {
        assertThat(json("--pot", "15", "--bulb", "16").get("count").intValue()).isZero();
        assertThat(run("--pot", "15", "--bulb", "16").err())
                .contains(
                        "A bulb of 16 cm does not fit a pot that is 15 cm across where it sits, 0.5 cm from the wall.");
        assertThat(run("--pot", "15x11x14", "--bulb", "4", "--below", "13").err())
                .contains("The pot is too shallow or too narrow for a second layer. Take a deeper one.");
        assertThat(run("--pot", "15", "--bulb", "16x2").out()).startsWith("2 bulbs of several sizes: they cannot fit");
    }

    @Test
    void moreThanCanBeAreNotSuggested() {
        assertThat(run("--pot", "15", "--bulb", "4", "--count", "10000").out())
                .startsWith("suggested: 7, of the 10 000 you mean to set: no more are known to fit\n");
    }

    @Test
    void whatIsBeyondCountingIsSaid() {
        assertThat(run("--pot", "10000", "--grade", "12"))
                .satisfies(printed -> assertThat(printed.code()).isEqualTo(ExitCode.COULD_NOT))
                .satisfies(printed ->
                        assertThat(printed.err()).startsWith("The pot is more than 40 times as wide as a bulb"));
        assertThat(run("--pot", "60x50x40", "--bulb", "5", "--below", "1"))
                .satisfies(printed -> assertThat(printed.code()).isEqualTo(ExitCode.COULD_NOT))
                .satisfies(printed ->
                        assertThat(printed.err()).startsWith("The pot is more than 40 times as wide as a bulb"));
        assertThat(run("--pot", "10x1x1", "--bulb", "30"))
                .satisfies(printed -> assertThat(printed.code()).isEqualTo(ExitCode.COULD_NOT))
                .satisfies(printed -> assertThat(printed.err()).startsWith("A bulb of that size does not go into"));
    }
}
