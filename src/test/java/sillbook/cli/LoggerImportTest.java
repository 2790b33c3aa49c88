// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.cli.Terminal.Printed;

/** The file of a thermometer on the command line. How files are read is another test's. */
class LoggerImportTest {
    private static final String CLEAR = """
            LOG-2
            Date;Time;Temp, F
            13.11.2026;07:00;41,0
            13.11.2026;08:00;
            (Button)
            13.11.2026;09:00;185,0
            """;
    private static final String UNCLEAR = "Date,Temp C\n3/11/2026 07:00,5.5\n4/11/2026 07:00,5.0\n";

    @TempDir
    private Path home;

    private Terminal terminal;

    /** The driver stays with the folder it was unpacked into first, so it is loaded while that folder is there. */
    @BeforeAll
    static void loadTheDriver(@TempDir Path first) {
        Terminal.ofDemo(first);
    }

    @BeforeEach
    void writeDownAPlace() {
        terminal = Terminal.at(home);
        terminal.run("write", "place cellar, cellar");
    }

    private String file(String text) throws IOException {
        return Files.writeString(home.resolve("box.csv"), text, UTF_8).toString();
    }

    private Printed dryRun(String text, String... options) throws IOException {
        String[] arguments = new String[options.length + 5];
        System.arraycopy(new String[] {"import", file(text), "--place", "cellar", "--dry-run"}, 0, arguments, 0, 5);
        System.arraycopy(options, 0, arguments, 5, options.length);
        return terminal.run(arguments);
    }

    @Test
    void whatIsOfAMomentToComeIsToldAndLeftOut() throws IOException {
        String ahead = "time,C\n2026-01-10T08:00Z,5\n2026-01-11T08:00Z,5\n2031-01-10T08:00Z,6\n2031-01-10T09:00Z,6\n";
        Printed printed = terminal.run("import", file(ahead), "--place", "cellar");

        assertThat(printed.out())
                .contains("4 new, 10 Jan 2026 to 10 Jan 2031\n")
                .contains("! 2 after now, left out: clock ahead, or dates the wrong way round\n");
        assertThat(terminal.run("readings", "--place", "cellar", "--days").out())
                .doesNotContain("2031");
    }

    @Test
    void whatItWasUnderstoodAsIsSaidThenWhatItComesTo() throws IOException {
        Printed printed = dryRun(CLEAR);

        assertThat(printed.out()).isEqualTo("""
                layout: 1 line, then a heading; semicolons between, decimal comma
                instant: columns 1 and 2, day.month.year; line 3 proves it: 13.11.2026
                clock: UTC (no zone is named, so the journal's)
                reading: column 3, "Temp, F", in F (as the file says)
                place: cellar
                2 new, 13 Nov
                1 without a value
                ! 1 suspicious, line 6 85; kept, marked, left out of sums
                ! 1 unreadable, line 5 "(Button)"
                """);
        assertThat(printed.err()).isEmpty();
        assertThat(printed.code()).isEqualTo(ExitCode.DONE);
    }

    @Test
    void theOrderOfDayAndMonthIsAskedAndNeverGuessed() throws IOException {
        Printed asked = dryRun(UNCLEAR);
        Printed told = dryRun(UNCLEAR, "--dates", "mdy");

        assertThat(asked.code()).isEqualTo(ExitCode.COULD_NOT);
        assertThat(asked.out()).contains("instant: column 1, day.month.year or month.day.year?\n");
        assertThat(asked.err()).isEqualTo("""
                Every date of it can be read as day.month.year and as month.day.year. Say which: --dates dmy or --dates mdy.
                Nothing is imported.
                """);
        assertThat(told.out()).contains("month.day.year (as you said)").contains("2 new, 11 Mar to 11 Apr\n");
    }

    @Test
    void everythingCanBeSaidBetter() throws IOException {
        Printed printed = dryRun(
                "2026-11-13 07:00,41,0,box A\n2026-11-13 08:00,42,5,box B\n",
                "--decimal",
                "comma",
                "--separator",
                "comma",
                "--column",
                "2",
                "--unit",
                "F",
                "--zone",
                "UTC-6",
                "--device",
                "box B",
                "--suspicious",
                "5,42.5F");

        assertThat(printed.out()).isEqualTo("""
                layout: no heading; commas between (as you said), decimal comma (as you said)
                instant: column 1, year.month.day
                clock: -06:00 (as you said)
                reading: column 2, in F (as you said)
                device: box B, of 2 devices
                place: cellar
                1 new, 13 Nov
                1 of something else
                ! 1 suspicious, line 2 5.8; kept, marked, left out of sums
                """);
    }

    @Test
    void sensorsAndDevicesAreAskedFor() throws IOException {
        assertThat(dryRun("Date;Temp;Temp\n2026-11-13 07:00;4,5;5,5\n").err())
                .startsWith(
                        "Each of its columns 2 \"Temp\" and 3 \"Temp\" may be the temperature. Say which: --column ");
        assertThat(dryRun("Box;Date;Temp\nA;2026-11-13 07:00;4,5\nB;2026-11-13 07:00;5,5\n")
                        .err())
                .startsWith("It has readings of 2 devices: A and B. Say whose: --device ");
    }

    private Printed takenIn(String text, String... options) throws IOException {
        return terminal.run(Stream.concat(Stream.of("import", file(text), "--place", "cellar"), Stream.of(options))
                .toArray(String[]::new));
    }

    @Test
    void whatWasToldIsKeptWithTheReadingsForTheNextFileLikeIt() throws IOException {
        String next = "Date,Temp C\n5/11/2026 07:00,4.5\n6/11/2026 07:00,4.0\n";

        assertThat(dryRun(UNCLEAR, "--dates", "dmy").out()).doesNotContain("is kept");
        assertThat(takenIn(UNCLEAR, "--dates", "dmy").out()).endsWith("""
                2 readings of cellar taken in from box.csv
                What you said of it is kept for the next file like it.
                """);
        assertThat(dryRun(next).out())
                .contains("instant: column 1, day.month.year (as told before)\n")
                .contains("2 new, 5 to 6 Nov\n");
        assertThat(dryRun(next, "--json").out()).contains("\"toldBefore\": [\"dates\"]");
        assertThat(dryRun(next, "--dates", "mdy").out())
                .as("what is said now goes first")
                .contains("month.day.year (as you said)");
        assertThat(takenIn(next, "--dates", "dmy").out())
                .as("told once more it is not kept anew")
                .endsWith("2 readings of cellar taken in from box.csv\n");
        terminal.run("undo");
        terminal.run("undo");
        assertThat(dryRun(next).code()).as("with the readings it goes").isEqualTo(ExitCode.COULD_NOT);
    }

    @Test
    void aFileOfAnotherPlaceOrAnotherHeadingIsAskedForAnew() throws IOException {
        takenIn(UNCLEAR, "--dates", "dmy");
        terminal.run("write", "place porch, porch");

        assertThat(dryRun(UNCLEAR.replace("Temp C", "Box, Temp C").replace(",5.", ",1,5."))
                        .code())
                .isEqualTo(ExitCode.COULD_NOT);
        assertThat(terminal.run("import", file(UNCLEAR), "--place", "porch", "--dry-run")
                        .code())
                .isEqualTo(ExitCode.COULD_NOT);
        assertThat(terminal.run("write", "remove file format cellar").out()).contains("file format of cellar removed");
        assertThat(dryRun(UNCLEAR).code()).isEqualTo(ExitCode.COULD_NOT);
    }

    @Test
    void aFileIsRemovedAsAStepOfItsOwnAndComesBackByUndo() throws IOException {
        takenIn(UNCLEAR, "--dates", "dmy");
        String read = terminal.run("readings", "--place", "cellar").out();
        assertThat(read).contains("from box.csv: 2 readings");

        assertThat(terminal.run("write", "remove file cellar").out())
                .contains("readings of cellar from box.csv removed");
        assertThat(terminal.run("readings", "--place", "cellar").out()).doesNotContain("box.csv");
        assertThat(terminal.run("verify").code()).isEqualTo(ExitCode.DONE);
        terminal.run("undo");
        assertThat(terminal.run("readings", "--place", "cellar").out()).isEqualTo(read);
    }

    @Test
    void theStandardInputIsReadToo() {
        Printed printed = terminal.typing(CLEAR).run("import", "-", "--place", "cel", "--dry-run", "--json");

        assertThat(printed.out()).contains("\"place\": \"cellar\"").contains("\"unit\": \"F\"");
    }

    @Test
    void whatIsNoSuchFileIsSaidInOneSentence() throws IOException {
        assertThat(dryRun("File is empty\n").err())
                .endsWith(
                        "box.csv: No line of it has both an instant and a temperature. It begins with 'File is empty'. Nothing is"
                                + " imported.\n");
        assertThat(dryRun(CLEAR, "--column", "9").err())
                .endsWith("box.csv: It has no column 9, only 3. Nothing is imported.\n");
        assertThat(terminal.run("import", "none.csv", "--place", "cellar", "--dry-run")
                        .err())
                .isEqualTo("none.csv: There is no such file. Nothing is imported.\n");
        assertThat(terminal.run("import", file(CLEAR), "--place", "attic", "--dry-run")
                        .err())
                .startsWith("There is no place 'attic'.");
        assertThat(dryRun(CLEAR, "--device", "box C").err())
                .endsWith("box.csv: No column of it names a device 'box C'. Nothing is imported.\n");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--dates xyz",
                "--column 0",
                "--unit K",
                "--zone Nowhere",
                "--separator dot",
                "--decimal tab",
                "--suspicious hot",
                "--as varieties"
            })
    void anOptionThatCannotBeReadIsMisuse(String option) throws IOException {
        assertThat(dryRun(CLEAR, option.split(" ")).code()).isEqualTo(ExitCode.USED_WRONGLY);
    }

    @Test
    void whatIsSaidOfAThermometerWantsItsPlace() throws IOException {
        Printed printed = terminal.run("import", file(CLEAR), "--as", "varieties", "--dates", "dmy");

        assertThat(printed.code()).isEqualTo(ExitCode.USED_WRONGLY);
        assertThat(printed.err()).isEqualTo("That is said of a thermometer's file. Name where it lies with --place.\n");
    }
}
