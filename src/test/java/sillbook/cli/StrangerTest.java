// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.cli.Terminal.Printed;

/** What a stranger may do to the commands: each answers with one sentence and leaves every file as it was. */
class StrangerTest {
    @TempDir
    private Path home;

    private void isRefused(Printed printed, String says) {
        assertThat(printed.code()).isEqualTo(ExitCode.COULD_NOT);
        assertThat(printed.out()).isEmpty();
        assertThat(printed.err()).hasLineCount(1).contains(says).endsWith(".\n");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "today",
                "pots",
                "pot T1",
                "places",
                "round cellar",
                "labels",
                "bulbs",
                "diary",
                "undo",
                "redo",
                "verify"
            })
    void withoutAJournalNothingIsBegun(String command) throws IOException {
        isRefused(Terminal.at(home).run(command.split(" ", -1)), "There is no journal");
        assertThat(home.resolve("winter.sillbook")).doesNotExist();
    }

    @ParameterizedTest
    @ValueSource(strings = {"pots", "write", "undo", "verify"})
    void aFileThatIsNoJournalStaysAsItIs(String command) throws IOException {
        Path file = Files.writeString(home.resolve("winter.sillbook"), "dear diary");
        String[] words = command.equals("write") ? new String[] {"write", "T1 moist"} : new String[] {command};

        isRefused(Terminal.at(home).run(words), "is not a journal");
        assertThat(file).hasContent("dear diary");
    }

    @Test
    void aDatabaseOfAnotherProgramStaysAsItIs() throws IOException, SQLException {
        Path file = home.resolve("winter.sillbook");
        try (var other = DriverManager.getConnection("jdbc:sqlite:" + file);
                var statement = other.createStatement()) {
            statement.execute("create table bees (hive text)");
        }
        byte[] before = Files.readAllBytes(file);

        isRefused(Terminal.at(home).run("write", "place cellar, cellar"), "a database of another program");
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }

    @ParameterizedTest
    @CsvSource({"today, Nothing is due.", "pots, No pots in season 2026-27 yet.", "diary, Nothing is written yet."})
    void anEmptyJournalSaysSo(String command, String says) {
        Terminal terminal = Terminal.at(home);
        terminal.run("write", "place cellar, cellar");
        Printed printed = terminal.run(command);

        assertThat(printed.code()).isEqualTo(ExitCode.DONE);
        assertThat(printed.out() + printed.err()).contains(says);
    }

    @Test
    void whatANameHoldsNeverReachesATerminal() {
        Terminal terminal = Terminal.at(home);
        terminal.run("write", "variety 'Bad\u001b[31m\u009b\u202e', tulip");
        terminal.run("write", "note 'Bad': \u001b]0;x\u0007");
        for (List<String> command : List.of(List.of("bulbs"), List.of("diary"), List.of("bulbs", "--json"))) {
            String out = terminal.run(command.toArray(String[]::new)).out();

            assertThat(out).isNotEmpty().doesNotContain("\u001b", "\u009b", "\u202e", "\u0007");
        }
    }

    @Test
    void inTheLocaleCEveryLineIsAscii() {
        Terminal terminal = Terminal.ofDemo(home).with("LC_ALL", "C");
        for (String command : List.of("today", "pots", "places", "bulbs", "diary")) {
            assertThat(terminal.run(command).out()).isNotEmpty().matches("\\p{ASCII}+");
        }
    }

    @ParameterizedTest
    @CsvSource({"Broken pipe, ''", "No space left on device, The output could not be written: No space left on device."
    })
    void whereNothingCanBePrintedNothingIsDone(String reason, String says) {
        Printed printed = Terminal.ofDemo(home).runWhereOutputFails(reason, "places");

        assertThat(printed.code()).isEqualTo(ExitCode.COULD_NOT);
        assertThat(printed.err()).startsWith(says).hasSizeLessThan(120);
        assertThat(printed.err().isEmpty()).isEqualTo(says.isEmpty());
    }

    @Test
    void anEndlessArgumentComesBackShort() {
        String endless = "x".repeat(10_000);
        Terminal terminal = Terminal.ofDemo(home);
        List<Printed> answers = List.of(
                terminal.run(endless),
                terminal.run("write", endless),
                terminal.run("write", "T4 ".repeat(3333)),
                terminal.run("pot", endless),
                terminal.run("today", "--on", endless));

        assertThat(answers).allSatisfy(printed -> {
            assertThat(printed.code()).isNotEqualTo(ExitCode.DONE);
            assertThat(printed.out()).isEmpty();
            assertThat(printed.err()).hasSizeBetween(10, 600);
        });
    }
}
