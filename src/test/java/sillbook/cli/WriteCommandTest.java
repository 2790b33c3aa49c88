// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sillbook.cli.Terminal.Printed;
import sillbook.model.Journal;

/** Lines on the command line: each a step, or nothing at all. */
class WriteCommandTest {
    @TempDir
    private Path home;

    private Terminal terminal;

    @BeforeEach
    void begin() {
        terminal = Terminal.at(home);
    }

    private Path file() {
        return home.resolve("winter.sillbook");
    }

    private void aCellarWithTwoPots() {
        assertThat(terminal.typing("place cellar, cellar, room 2\n2 x Marrow Lane (tulip triumph) x5, cellar, 14 oct\n")
                        .run("write", "-"))
                .extracting(Printed::code)
                .isEqualTo(ExitCode.DONE);
    }

    @Test
    void theFirstLineBeginsAJournal() {
        Printed printed = terminal.run("write", "place cellar, cellar");

        assertThat(printed)
                .isEqualTo(new Printed(
                        ExitCode.DONE, "place cellar written down\n", "Began a journal, " + file() + ".\n"));
        assertThat(terminal.journal(home).places().all()).hasSize(1);
    }

    @Test
    void aFirstLineThatCannotBeKeptBeginsNone() {
        Printed printed = terminal.run("write", "T4 moist");

        assertThat(printed.code()).isEqualTo(ExitCode.COULD_NOT);
        assertThat(printed.out()).isEmpty();
        assertThat(printed.err()).hasLineCount(1).contains("T4");
        assertThat(file()).doesNotExist();
    }

    @Test
    void aDryRunSaysWhatTheLineMeansAndKeepsNothing() throws IOException {
        aCellarWithTwoPots();
        byte[] before = Files.readAllBytes(file());

        Printed printed = terminal.run("write", "--dry-run", "3 x Marrow Lane x5, cellar, today");

        assertThat(printed.code()).isEqualTo(ExitCode.DONE);
        assertThat(printed.lines())
                .startsWith(
                        "3 pots T3 to T5, 'Marrow Lane', 5 in each", "potted Tue 12 Jan 2027, today", "in the cellar");
        assertThat(printed.err()).contains("! The cellar has no room left.");
        assertThat(Files.readAllBytes(file())).isEqualTo(before);
    }

    @Test
    void aDryRunNeedsNoJournalAndItsLinesFollowEachOther() {
        Printed printed = terminal.typing("place cellar, cellar\nMarrow Lane (tulip) x5, cellar, today\nT1 moist\n")
                .run("write", "--dry-run", "-");

        assertThat(printed.code()).isEqualTo(ExitCode.DONE);
        assertThat(printed.out()).contains("T1 moist");
        assertThat(file()).doesNotExist();
    }

    @Test
    void eachLineOfTheStandardInputIsAStepThatCanBeTakenBack() {
        aCellarWithTwoPots();
        Printed printed = terminal.typing("# checks\n\nT1 moist\nT2 dry\n").run("write", "-");

        assertThat(printed).isEqualTo(new Printed(ExitCode.DONE, "T1 checked\nT2 checked\n", ""));
        assertThat(terminal.run("undo").out()).isEqualTo("taken back: T2 checked\n");
        assertThat(terminal.run("redo").out()).isEqualTo("put back: T2 checked\n");
    }

    @Test
    void theFirstLineThatCannotBeKeptEndsItAndIsNamed() {
        aCellarWithTwoPots();
        Journal before = terminal.journal(home);
        Printed printed = terminal.typing("T1 moist\nT99 dry\nT2 dry\n").run("write", "-");

        assertThat(printed.code()).isEqualTo(ExitCode.COULD_NOT);
        assertThat(printed.out()).isEqualTo("T1 checked\n");
        assertThat(printed.err())
                .isEqualTo("Line 2, 'T99 dry': There is no pot T99 in season 2026-27. There are T1-T2."
                        + " The line before it is kept.\n");
        assertThat(terminal.journal(home).events().all())
                .hasSize(before.events().all().size() + 1);
    }

    @Test
    void anEmptyInputIsNoLine() {
        Printed printed = terminal.typing("\n# nothing\n").run("write", "-");

        assertThat(printed.code()).isEqualTo(ExitCode.COULD_NOT);
        assertThat(printed.err()).startsWith("There is no line on the standard input.");
    }

    @Test
    void undoingEverythingLeavesTheJournalItBeganAs() {
        aCellarWithTwoPots();
        Journal full = terminal.journal(home);
        assertThat(terminal.run("undo").code()).isEqualTo(ExitCode.DONE);
        assertThat(terminal.run("undo").code()).isEqualTo(ExitCode.DONE);
        Printed nothingLeft = terminal.run("undo");

        assertThat(nothingLeft).isEqualTo(new Printed(ExitCode.COULD_NOT, "", "There is nothing to take back.\n"));
        assertThat(terminal.journal(home).pots().all()).isEmpty();
        terminal.run("redo");
        terminal.run("redo");
        assertThat(terminal.journal(home)).isEqualTo(full);
    }
}
