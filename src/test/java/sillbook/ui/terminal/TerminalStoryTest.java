// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.story.NeedsTmux;
import sillbook.story.Tmux;

/** The shell of the full screen in a real terminal, with a sampler for a program. */
@ExtendWith(NeedsTmux.class)
class TerminalStoryTest {
    private static final String JAVA =
            Path.of(System.getProperty("java.home"), "bin", "java").toString();

    @TempDir
    private Path faults;

    private Tmux sampler(Tmux.Start start) {
        return start.run(command());
    }

    private String[] command() {
        return new String[] {
            JAVA,
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            Sampler.class.getName(),
            "DARK",
            faults.toString()
        };
    }

    @Test
    void drawsAndFollowsKeysWithTheCursorOnTheLine() {
        try (Tmux tmux = sampler(Tmux.terminal())) {
            tmux.waitFor("Sampler of 80x24  0 inputs").waitFor("line 1 of 200");
            assertThat(tmux.isOnAlternateScreen()).isTrue();
            assertThat(tmux.cursor()).isEqualTo("4,1");
            tmux.press("Down", "Down").waitFor("line 3 of 200");
            assertThat(tmux.cursor()).isEqualTo("4,3");
            assertThat(tmux.screen().lines().toList().get(3)).startsWith("▸   T2 'Marrow Lane' x2");
            tmux.press("NPage").waitFor("line 24 of 200").press("q");
            assertThat(tmux.exitCode()).isZero();
            assertThat(tmux.isOnAlternateScreen()).isFalse();
        }
    }

    @Test
    void characterOfAnyWidthLeavesTheLineInPlace() {
        try (Tmux tmux = sampler(Tmux.terminal())) {
            tmux.waitFor("Écru 球根 🌷 ⚡ end of emoji, é and ^[[31m");
            assertThat(tmux.screen().lines().toList().get(0)).startsWith(" Sampler");
        }
    }

    @Test
    void keysThatComeByteByByteAreStillKeys() {
        try (Tmux tmux = sampler(Tmux.terminal())) {
            tmux.waitFor("0 inputs");
            for (int octet : new int[] {0x1B, '[', 'B'}) {
                tmux.send(octet);
            }
            tmux.waitFor("line 2 of 200").waitFor("1 inputs, last Down");
            tmux.press("Escape").waitFor("2 inputs, last Esc");
            tmux.press("F1")
                    .waitFor("last F1")
                    .press("BTab")
                    .waitFor("last Shift-Tab")
                    .press("C-c")
                    .waitFor("last Ctrl-C");
            tmux.press("C-s").waitFor("last Ctrl-S").press("C-\\").press("C-v").waitFor("last Ctrl-V");
            tmux.type("É").waitFor("last É");
        }
    }

    @Test
    void pasteIsTextAndNoCommand() {
        try (Tmux tmux = sampler(Tmux.terminal())) {
            tmux.waitFor("0 inputs").paste("q\nx\tq").waitFor("1 inputs, last 'q x q'");
        }
    }

    @Test
    void anotherSizeIsDrawnAnewAndTheSamePlaceStays() {
        try (Tmux tmux = sampler(Tmux.terminal().size(120, 40))) {
            tmux.waitFor("Sampler of 120x40").press("Down").waitFor("line 2 of 200");
            tmux.resize(80, 24).waitFor("Sampler of 80x24").waitFor("line 2 of 200");
            tmux.resize(5, 4).waitUntil("almost nothing is left", screen -> screen.startsWith(" Samp\n▸"));
            tmux.resize(100, 30).waitFor("Sampler of 100x30").waitFor("line 2 of 200");
        }
    }

    @Test
    void aFaultLeavesAUsableTerminalALineAndAReportWithoutTheJournalsWords() throws IOException {
        Path folder = faults.resolve("new");
        String[] command = command();
        command[command.length - 1] = folder.toString();
        try (Tmux tmux = Tmux.terminal().size(200, 24).run(command)) {
            tmux.waitFor("0 inputs").press("x").waitFor("stopped by a fault of its own");
            assertThat(tmux.exitCode()).isEqualTo(1);
            assertThat(tmux.isOnAlternateScreen()).isFalse();
            assertThat(tmux.cursor()).isNotEqualTo("hidden");
            Path report;
            try (Stream<Path> files = Files.list(folder)) {
                report = files.toList().get(0);
            }
            tmux.waitFor(report.toString());
            assertThat(Files.readString(report))
                    .contains("IllegalStateException", "Sampler.effect")
                    .doesNotContain("Marrow");
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(report)))
                    .isEqualTo("rw-------");
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)))
                    .isEqualTo("rwx------");
        }
    }

    @Test
    void aFaultInAnEffectEndsTheProgramToo() {
        try (Tmux tmux = sampler(Tmux.terminal())) {
            tmux.waitFor("0 inputs")
                    .press("e")
                    .waitFor("'the answer'")
                    .press("f")
                    .waitFor("stopped by a fault");
            assertThat(tmux.exitCode()).isEqualTo(1);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"TERM", "HUP", "INT"})
    void aSignalGivesTheTerminalBack(String signal) throws Exception {
        try (Tmux tmux = samplerInAShell()) {
            List<ProcessHandle> started = tmux.processes();
            long program = started.get(started.size() - 1).pid();
            new ProcessBuilder("kill", "-s", signal, String.valueOf(program))
                    .start()
                    .waitFor();
            awaitPrompt(tmux).type("echo typed $((6*7))").press("Enter").waitFor("typed 42");
            assertThat(tmux.isOnAlternateScreen()).isFalse();
            assertThat(tmux.cursor()).isNotEqualTo("hidden");
            assertThat(tmux.screen()).contains("echo typed $((6*7))");
        }
    }

    @Test
    void stoppedItGivesTheShellItsTerminalAndComesBackWhole() throws Exception {
        try (Tmux tmux = samplerInAShell()) {
            awaitPrompt(tmux.press("Down").waitFor("line 2 of 200").press("C-z"));
            assertThat(tmux.isOnAlternateScreen()).isFalse();
            tmux.type("echo typed $((6*7))").press("Enter").waitFor("typed 42");
            tmux.type("fg")
                    .press("Enter")
                    .waitFor("line 2 of 200")
                    .press("Down")
                    .waitFor("line 3 of 200");
            assertThat(tmux.isOnAlternateScreen()).isTrue();
            awaitPrompt(tmux.press("q")).type("echo left $?").press("Enter").waitFor("left 0");
        }
    }

    /** A shell with a person at it, who has started the sampler. */
    private Tmux samplerInAShell() throws IOException {
        Path script =
                Files.writeString(faults.resolve("s"), "exec " + String.join(" ", quoted(List.of(command()))) + "\n");
        Tmux tmux = Tmux.terminal().environment("PS1", "shell> ").run("sh", "-i");
        return awaitPrompt(tmux).type("sh " + script).press("Enter").waitFor("0 inputs");
    }

    private static Tmux awaitPrompt(Tmux tmux) {
        return tmux.waitUntil("the shell is ready", screen -> screen.strip().endsWith("shell>"));
    }

    private static List<String> quoted(List<String> words) {
        return words.stream().map(word -> "'" + word + "'").toList();
    }

    @Test
    void withoutATerminalNothingIsStarted() {
        try (Tmux tmux = Tmux.terminal()
                .run(
                        "sh",
                        "-c",
                        "\"$@\" </dev/null",
                        "sh",
                        JAVA,
                        "-cp",
                        System.getProperty("java.class.path"),
                        Sampler.class.getName())) {
            tmux.waitFor("usage: Sampler");
            assertThat(tmux.exitCode()).isEqualTo(2);
        }
    }

    @Test
    void onATerminalThatOnlyPrintsNothingIsStarted() {
        try (Tmux tmux = sampler(Tmux.terminal().environment("TERM", "dumb"))) {
            tmux.waitFor("usage: Sampler");
            assertThat(tmux.exitCode()).isEqualTo(2);
        }
    }

    @Test
    void outsideUtf8OnlyAsciiIsDrawn() {
        try (Tmux tmux = sampler(Tmux.terminal().environment("LC_ALL", "C"))) {
            tmux.waitFor("line 1 of 200");
            assertThat(tmux.screen()).contains(">   T0 'Marrow Lane' x0").matches("[\\x00-\\x7F]*");
        }
    }

    @Test
    void coloursFollowTheEnvironment() {
        try (Tmux tmux = sampler(Tmux.terminal().environment("COLORTERM", "truecolor"))) {
            assertThat(tmux.waitFor("line 1 of 200").colouredScreen()).contains("\u001B[38;2;108;166;240m");
        }
        try (Tmux tmux = sampler(Tmux.terminal().environment("COLORTERM", "").environment("NO_COLOR", "1"))) {
            assertThat(tmux.waitFor("line 1 of 200").colouredScreen())
                    .doesNotContain("[38;")
                    .doesNotContain("[48;");
        }
    }
}
