// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sillbook.cli.Terminal.Printed;

/** What is copied onto the sticks: after potting a line, on paper a sheet. */
class LabelsCommandTest {
    @TempDir
    private Path home;

    /** Triumph tulips want 12, 15, 17 weeks of cold (Purdue 2019, Colorado State, as the handbook has them), counted from 12 January. */
    @Test
    void afterPottingTheStickOfABatchIsOneLine() {
        Terminal terminal = Terminal.at(home);
        terminal.run("write", "place cellar, cellar");

        assertThat(terminal.run("write", "6 x Marrow Lane (tulip triumph) x5, cellar, 12 jan")
                        .lines())
                .last()
                .isEqualTo("stick: T1-T6 'Marrow Lane' x5, potted 12 Jan, check from 27 Apr, use by 11 May");
        assertThat(terminal.run("write", "same again T1 x2 today").lines())
                .last()
                .asString()
                .startsWith("stick: T7-T8 'Marrow Lane' x5, potted 12 Jan");
        assertThat(terminal.run("write", "T1 moist").out()).doesNotContain("stick");
    }

    @Test
    void aPotThatWaitedHasItsStickWhenItIsPottedUp() {
        Terminal terminal = Terminal.at(home);
        terminal.run("write", "place sill, warm sill");
        assertThat(terminal.run("write", "Umbrella Street (amaryllis) x1, waiting")
                        .out())
                .doesNotContain("stick");

        assertThat(terminal.run("write", "A1 potted, sill").lines())
                .last()
                .asString()
                .startsWith("stick: A1 'Umbrella Street' x1, potted 12 Jan, flowers about ");
    }

    @Test
    void whatFloweredYearsAgoIsNotPromisedOnAStick() {
        Terminal terminal = Terminal.at(home);
        terminal.run("write", "place sill, warm sill");

        assertThat(terminal.run("write", "Umbrella Street (amaryllis) x1, sill, 10 nov 2024")
                        .lines())
                .last()
                .isEqualTo("stick: A1 'Umbrella Street' x1, potted 10 Nov");
    }

    @Test
    void theLabelOfAMixedPotNamesEachKind() {
        Terminal terminal = Terminal.at(home);
        terminal.run("write", "Night Marbles (grape hyacinth) x10, Lantern Row (daffodil) x3, label M1, 1 oct");

        assertThat(terminal.run("labels", "M1").out()).contains(": grape hyacinth, daffodil");
    }

    @Test
    void aSheetHasALabelOfOneSizeForEachPotWithItsCutMarks() {
        List<String> sheet = Terminal.ofDemo(home).run("labels", "H8-H10").lines();
        String across = "+" + " -".repeat(19) + "+" + " -".repeat(19) + "+";

        assertThat(sheet.get(0)).isEqualTo(across);
        assertThat(sheet.get(1))
                .startsWith(": H8  'Inkwell' x3 ")
                .contains(": H9  'Inkwell' x3 ")
                .endsWith(":");
        assertThat(sheet.get(6)).isEqualTo(across);
        assertThat(sheet.get(7)).startsWith(": H10  'Inkwell' x3 ").hasSize(40);
        assertThat(sheet.get(12)).isEqualTo(across);
        assertThat(sheet).filteredOn(line -> line.contains("NOT FOOD")).hasSize(2);
    }

    @Test
    void beneathTheLabelsStandTheCautionsWithTheirSourcesAndWhomToAsk() {
        String sheet = Terminal.ofDemo(home).run("labels", "D1").out().replace("\n", " ");

        assertThat(sheet)
                .contains("! Bulbs are not food")
                .contains("ask your poison centre or a doctor at once")
                .contains("(National Poisons Information Centre of Ireland")
                .contains("! daffodil: Every part is poisonous")
                .contains("British Columbia Drug and Poison Information Centre");
    }

    @Test
    void dueAsksTodayAndALabelIsPrintedOnceThoughItIsNamedTwice() {
        Terminal terminal = Terminal.ofDemo(home);

        assertThat(terminal.run("labels", "--due").out())
                .contains(": T4  ", ": D1  ", ": P1  ", ": H8  ")
                .doesNotContain("C1  '");
        assertThat(terminal.run("labels", "t4", "T4", "T3-t4").lines())
                .filteredOn(line -> line.contains("T4  "))
                .hasSize(1);
    }

    @Test
    void theSheetKeepsToThePaperAndToAscii() {
        Printed printed = Terminal.ofDemo(home).with("LC_ALL", "C").run("labels");

        assertThat(printed.out()).matches("\\p{ASCII}+");
        assertThat(printed.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
    }

    @Test
    void aLabelThatNamesNoPotIsSaid() {
        Printed printed = Terminal.ofDemo(home).run("labels", "T1", "Z9-Z11");

        assertThat(printed.code()).isEqualTo(ExitCode.COULD_NOT);
        assertThat(printed.out()).isEmpty();
        assertThat(printed.err())
                .isEqualTo("There is no pot 'Z9-Z11' in season 2026-27. 'sillbook pots' lists those there are.\n");
    }

    @Test
    void withoutAnyPotThereIsNothingToPrint() {
        Terminal terminal = Terminal.at(home);
        terminal.run("write", "place cellar, cellar");

        assertThat(terminal.run("labels").err()).isEqualTo("There is no pot to label.\n");
    }

    @Test
    void anotherSeasonsPotsAreLabelledThoughTheyAreDone() {
        assertThat(Terminal.ofDemo(home).run("labels", "--season", "2025", "T7").out())
                .contains(": T7  ")
                .contains("potted ");
    }
}
