// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.cli.Terminal.Printed;

/** What holds for every command: help, version, misuse. None of it touches a journal. */
class CommandsTest {
    private final Terminal terminal = Terminal.withoutShelf();

    static Stream<List<String>> commands() {
        return Names.ofCommands().map(name -> List.of(name.split(" ", -1)));
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyCommandTellsHowItIsUsed(List<String> command) {
        for (String plea : List.of("--help", "-h")) {
            Printed printed = terminal.run(with(command, plea));

            assertThat(printed.code()).isEqualTo(ExitCode.DONE);
            assertThat(printed.out()).startsWith("Usage: sillbook " + String.join(" ", command));
            assertThat(printed.err()).isEmpty();
            assertThat(printed.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
        }
    }

    @ParameterizedTest
    @MethodSource("commands")
    void helpIsGivenWhateverElseIsWrong(List<String> command) {
        Printed printed = terminal.run(with(command, "--no-such-option", "x", "y", "z", "--help"));

        assertThat(printed.code()).isEqualTo(ExitCode.DONE);
        assertThat(printed.out()).startsWith("Usage: sillbook " + String.join(" ", command));
    }

    @ParameterizedTest
    @MethodSource("commands")
    void anUnknownOptionIsMisuse(List<String> command) {
        Printed printed = terminal.run(with(command, "--jurnal", "x"));

        assertThat(printed.code()).isEqualTo(ExitCode.USED_WRONGLY);
        assertThat(printed.out()).isEmpty();
        assertThat(printed.err())
                .contains("has no option --jurnal. Did you mean --journal?")
                .contains("'sillbook " + String.join(" ", command) + " --help' says how it is used.");
    }

    private static String[] with(List<String> command, String... more) {
        return Stream.concat(command.stream(), Stream.of(more)).toArray(String[]::new);
    }

    @Test
    void theProgramsHelpNamesEveryCommandAndTheExitCodes() {
        Printed printed = terminal.run("--help");

        assertThat(printed.code()).isEqualTo(ExitCode.DONE);
        assertThat(printed.out()).contains("Exit codes: 0 done, 1 could not be done, 2 used wrongly.");
        assertThat(commands().map(words -> words.get(0)))
                .allSatisfy(name -> assertThat(printed.lines()).anyMatch(line -> line.startsWith("  " + name + " ")));
    }

    @ParameterizedTest
    @CsvSource({"verfy, verify", "unod, undo", "bakcup, backup"})
    void aSlipOfTheFingerIsGuessedButNotDone(String typed, String meant) {
        Printed printed = terminal.run(typed);

        assertThat(printed.code()).isEqualTo(ExitCode.USED_WRONGLY);
        assertThat(printed.out()).isEmpty();
        assertThat(printed.err()).startsWith("sillbook has no command " + typed + ". Did you mean " + meant + "?");
    }

    @Test
    void aWordLikeNoCommandIsNotGuessedAt() {
        assertThat(terminal.run("xylophone").err()).startsWith("sillbook has no command xylophone.\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"undo", "verify"})
    void aSuperfluousArgumentIsNamed(String command) {
        Printed printed = terminal.run(command, "surplus");

        assertThat(printed.code()).isEqualTo(ExitCode.USED_WRONGLY);
        assertThat(printed.err()).startsWith("sillbook " + command + " has no argument surplus.");
    }

    @Test
    void aMissingArgumentIsNamed() {
        Printed printed = terminal.run("backup");

        assertThat(printed.code()).isEqualTo(ExitCode.USED_WRONGLY);
        assertThat(printed.err()).startsWith("sillbook backup needs FILE.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--version", "--help", "today --help"})
    void whatCannotBePrintedIsNotDone(String command) {
        Printed printed = terminal.runWhereOutputFails("No space left on device", command.split(" ", -1));

        assertThat(printed.code()).isEqualTo(ExitCode.COULD_NOT);
        assertThat(printed.err()).startsWith("The output could not be written: No space left on device.");
    }

    @Test
    void theVersionIsOneLineAndThatOfTheBuild() throws IOException {
        Printed printed = terminal.run("--version");
        String pom = Files.readString(Path.of("pom.xml"), UTF_8);

        assertThat(printed).isEqualTo(new Printed(ExitCode.DONE, "sillbook " + Version.NUMBER + "\n", ""));
        assertThat(pom).contains("<artifactId>sillbook</artifactId>\n  <version>" + Version.NUMBER + "</version>");
    }

    @Test
    void withoutACommandOrATerminalTheUsageIsSaid() {
        Printed printed = terminal.run();

        assertThat(printed.code()).isEqualTo(ExitCode.USED_WRONGLY);
        assertThat(printed.out()).isEmpty();
        assertThat(printed.err()).contains("The screens need a terminal").contains("Usage: sillbook");
    }

    @Test
    void whatIsTypedComesBackHarmless() {
        Printed printed = terminal.run("to\u001b[31mday\u202e\u009b");

        assertThat(printed.err()).contains("to^[[31mday<U+202E><U+009B>").doesNotContain("\u001b", "\u202e", "\u009b");
    }

    @Test
    void inALocaleWithoutUtf8WordsAreAscii() {
        Printed printed = terminal.with("LC_ALL", "C").run("tödäy");

        assertThat(printed.err()).startsWith("sillbook has no command today.");
    }
}
