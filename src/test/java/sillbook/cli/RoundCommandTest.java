// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.cli.Terminal.Printed;

/** The list that is carried to a place, and what comes back from it. */
class RoundCommandTest {
    @TempDir
    private Path home;

    @Test
    void whatWasTickedIsWrittenBackAndTodayNoLongerAsks() {
        Terminal terminal = Terminal.ofDemo(home);
        assertThat(terminal.run("today").out()).contains("  cellar, 20 pots: moist? roots? shoot?");

        List<String> printed = terminal.run("round", "cellar").lines();
        String example = printed.stream()
                .filter(line -> line.startsWith("  cellar all well, "))
                .findFirst()
                .orElseThrow();
        Printed written = terminal.run("write", example.strip());

        assertThat(written.code()).as(written.err()).isEqualTo(ExitCode.DONE);
        assertThat(terminal.run("today").out())
                .doesNotContain("cellar, 20 pots")
                .contains("garage fridge, 6 pots");
        assertThat(terminal.run("pot", "D2").out()).contains("Tue 12 Jan 2027: checked: dry");
    }

    @Test
    void aBatchIsOneRowWithRoomForThoseUnlikeTheOthers() {
        List<String> printed = Terminal.ofDemo(home).run("round", "cellar").lines();

        assertThat(printed).filteredOn(line -> line.startsWith("H8-H22 ")).hasSize(1);
        int row = printed.indexOf(printed.stream()
                .filter(line -> line.startsWith("H8-H22 "))
                .findFirst()
                .orElseThrow());
        assertThat(printed.get(row + 2)).startsWith("        not all alike: ____");
    }

    @Test
    void whereThePotsOfABatchDifferTheLastLookNamesThem() {
        Terminal terminal = Terminal.at(home);
        terminal.run("write", "place cellar, cellar");
        terminal.run("write", "5 x Marrow Lane (tulip triumph) x5, cellar, 20 oct");
        terminal.run("write", "cellar all moist, T3 dry, T5 mould");

        assertThat(terminal.run("round", "cellar").lines())
                .anyMatch(line -> line.startsWith("T1-T5 ") && line.endsWith("12 Jan: T3 dry; T5 mould; T1-T.."));
    }

    @Test
    void ofAGlassTheLineTellsTheLengthOfTheRoots() {
        Terminal terminal = Terminal.at(home);
        terminal.run("write", "place cellar, cellar");
        terminal.run("write", "3 x Inkwell (hyacinth) x1, glass, cellar, 1 dec");
        for (String label : List.of("H1", "H2", "H3")) {
            terminal.run("write", label + " moved cellar, 1 dec");
        }
        terminal.run("write", "Penny Gloaming (crocus) x9, cellar, 1 dec");
        terminal.run("write", "Penny Gloaming (crocus) x9, cellar, 1 dec");

        assertThat(terminal.run("round", "cellar").out()).contains("C1 dry, C2 mould, H1 roots 6 cm");
    }

    @Test
    void aPotWhoseWeeksAreHadAndThatNobodyLookedAtIsPointedOut() {
        Terminal terminal = Terminal.at(home);
        terminal.run("write", "place cellar, cellar");
        terminal.run("write", "2 x Marrow Lane (tulip triumph) x5, cellar, 20 sep");
        terminal.run("write", "Inkwell (hyacinth) x3, cellar, 20 dec");

        assertThat(terminal.run("round", "cellar").lines())
                .filteredOn(line -> !line.startsWith("        [ ]"))
                .containsSubsequence(
                        "H1      'Inkwell' x3            3, all",
                        "T1-T2   'Marrow Lane' x5        16, all",
                        "        look for roots or a shoot: its weeks are had");
    }

    @Test
    void eachWayOfGrowingHasItsBoxes() {
        Terminal terminal = Terminal.at(home);
        terminal.run("write", "place cellar, cellar");
        terminal.run("write", "Inkwell (hyacinth) x1, glass, cellar, 1 dec");
        terminal.run("write", "Linen Parade (paperwhite) x5, pebbles, cellar, 1 dec");
        terminal.run("write", "Penny Gloaming (crocus) x9, bowl, cellar, 1 dec");

        assertThat(terminal.run("round", "cellar").lines())
                .anyMatch(line ->
                        line.startsWith("        [ ] water low [ ] high [ ] cloudy, roots ____ cm, shoot ____ cm __"))
                .anyMatch(line -> line.startsWith("        [ ] water low [ ] high [ ] cloudy ____ cm [ ] buds __"))
                .anyMatch(line -> line.startsWith("        [ ] dry [ ] wet ____ cm [ ] buds [ ] mould __"))
                .noneMatch(line -> line.contains("no roots"));
    }

    @Test
    void dryBulbsHaveBoxesOfTheirOwn() {
        Terminal terminal = Terminal.at(home);
        terminal.run("write", "place fridge, fridge");
        terminal.run("write", "bought 30 Marrow Lane (tulip triumph), fridge, 1 dec");

        assertThat(terminal.run("round", "fridge").lines())
                .contains("Tuesday 12 January 2027. Dry bulbs, every 7 days, last 1 Dec.")
                .containsSequence(
                        "dry 'Marrow Lane' x30           dry, 6",
                        "        [ ] firm [ ] soft [ ] mould " + "_".repeat(44))
                .contains("  fridge all well, Marrow Lane bulbs soft");
        terminal.run("write", "fridge all well, Marrow Lane bulbs soft");
        assertThat(terminal.run("round", "fridge").out()).contains("dry, 6          felt 12 Jan");
        assertThat(terminal.run("today").out()).doesNotContain("firm?");
    }

    @Test
    void labelsThatDoNotRunHaveALineOfTheirOwn() {
        Terminal terminal = Terminal.at(home);
        terminal.run("write", "place cellar, cellar");
        terminal.run("write", "place porch, porch");
        terminal.run("write", "20 x Marrow Lane (tulip triumph) x5, cellar, 20 oct");
        terminal.run("write", "T2 T4 T6 T8 T10 T12 porch");

        assertThat(terminal.run("round", "cellar").lines())
                .containsSubsequence("T1 T3 T5 T7 T9 T11 T13-T20", "        'Marrow Lane' x5        12, all");
    }

    @ParameterizedTest
    @ValueSource(strings = {"cellar", "fridge", "trench", "stair window", "porch"})
    void theListKeepsToThePaperAndIsAsciiWhereTheLocaleIs(String place) {
        Printed printed = Terminal.ofDemo(home).with("LC_ALL", "C").run("round", place);

        assertThat(printed.code()).isEqualTo(ExitCode.DONE);
        assertThat(printed.out()).matches("\\p{ASCII}+");
        assertThat(printed.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
    }

    @Test
    void theCautionsOfThePlaceStandAtTheFoot() {
        Terminal terminal = Terminal.ofDemo(home);
        terminal.run("write", "place cellar, hazard fruit");

        assertThat(terminal.run("round", "cellar").lines())
                .last()
                .asString()
                .startsWith("! Never with ripening fruit: its gas kills the buds.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            attic    | There is no place 'attic'. There are 'garage fridge', 'cellar'
            window   | There is no place 'window sill'
            """)
    void aPlaceThatIsNotThereIsNamedBesideThoseThatAre(String typed, String says) {
        Printed printed = Terminal.ofDemo(home).run("round", typed.equals("window") ? "window sill" : typed);

        assertThat(printed.code()).isEqualTo(ExitCode.COULD_NOT);
        assertThat(printed.out()).isEmpty();
        assertThat(printed.err()).startsWith(says);
    }

    @Test
    void aNameThatBeginsTwoIsAskedAbout() {
        Terminal terminal = Terminal.ofDemo(home);
        terminal.run("write", "place garage shelf, garage");
        Printed printed = terminal.run("round", "garage");

        assertThat(printed.code()).isEqualTo(ExitCode.COULD_NOT);
        assertThat(printed.err())
                .isEqualTo("'garage' may be 'garage fridge' or 'garage shelf'. Write more of the name.\n");
    }

    @Test
    void aPlaceWhereNothingStandsHasNoRound() {
        Terminal terminal = Terminal.at(home);
        assertThat(terminal.run("write", "place cellar, cellar").code()).isEqualTo(ExitCode.DONE);
        Printed printed = terminal.run("round", "cellar");

        assertThat(printed.code()).isEqualTo(ExitCode.DONE);
        assertThat(printed.out()).isEmpty();
        assertThat(printed.err()).isEqualTo("Nothing stands or waits in the cellar.\n");
    }
}
