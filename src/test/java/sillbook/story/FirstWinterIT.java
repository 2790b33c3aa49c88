// SPDX-License-Identifier: Apache-2.0
package sillbook.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A book is begun, kept for a while, taken back to its first page and put back again, over a restart. */
@ExtendWith(NeedsTmux.class)
class FirstWinterIT {
    private static final String PROGRAM = System.getProperty("sillbook.program");
    private static final List<String> LINES = List.of(
            "place cellar, cellar, room 20",
            "variety Marrow Lane, tulip triumph, 45 cm",
            "6 x Marrow Lane x5, 19 cm, waiting",
            "T1 T2 potted, cellar, today",
            "T1 moist");

    @TempDir
    private Path home;

    private Path journal;

    @BeforeEach
    void place() {
        journal = home.resolve("winter.sillbook");
    }

    private Tmux open(Path file) {
        return Tmux.terminal()
                .environment("XDG_DATA_HOME", home.resolve("data").toString())
                .environment("XDG_CACHE_HOME", home.resolve("cache").toString())
                .environment("XDG_STATE_HOME", home.resolve("state").toString())
                .run(PROGRAM, "--journal", file.toString());
    }

    private static void write(Tmux terminal, String line) {
        terminal.press("l").waitFor("A line").type(line).press("Enter").waitFor("U takes it back");
        terminal.waitForNo("A line");
    }

    private String command(String... arguments) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(PROGRAM);
        builder.command().addAll(List.of(arguments));
        builder.environment().put("XDG_CACHE_HOME", home.resolve("cache").toString());
        Process process = builder.redirectErrorStream(true).start();
        process.getOutputStream().close();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(said).isZero();
        return said;
    }

    @Test
    void sixPotsTwoOfThemInTheColdTakenBackToNothingAndPutBack() throws IOException, InterruptedException {
        try (Tmux terminal = open(journal)) {
            terminal.waitFor("It has no pages yet").press("Enter").waitFor("Your own book");
            terminal.press("Escape").waitForNo("Your own book").waitFor("there are no pots yet");
            LINES.forEach(line -> write(terminal, line));
            terminal.press("1").waitFor("pot up");
            terminal.press("2").waitFor("T6").press("1");

            terminal.press("u")
                    .waitFor("Take back")
                    .press("Down", "Down", "Down", "Down")
                    .press("Enter");
            terminal.waitFor("there are no pots yet");
            terminal.press("r")
                    .waitFor("Put back")
                    .press("Down", "Down", "Down", "Down")
                    .press("Enter");
            terminal.waitFor("pot up");

            terminal.press("q").waitFor("All is kept").press("Enter");
            assertThat(terminal.exitCode()).isZero();
        }
        try (Tmux again = open(journal)) {
            again.waitFor("pot up")
                    .press("u")
                    .waitFor("T1 checked")
                    .press("Enter")
                    .waitFor("Taken back");
            again.press("q").waitFor("All is kept").press("Enter");
        }
        assertThat(command("verify", "--journal", journal.toString())).isNotEmpty();
    }

    @Test
    void theSameLinesByCommandGiveTheSameJournal() throws IOException, InterruptedException {
        try (Tmux terminal = open(journal)) {
            terminal.waitFor("It has no pages yet").press("Enter").waitFor("Your own book");
            terminal.press("Escape").waitForNo("Your own book").waitFor("there are no pots yet");
            LINES.forEach(line -> write(terminal, line));
            terminal.press("q").waitFor("All is kept").press("Enter");
            terminal.exitCode();
        }
        Path other = home.resolve("other.sillbook");
        for (String line : LINES) {
            command("write", "--journal", other.toString(), line);
        }

        assertThat(withoutHours(command("today", "--journal", other.toString())))
                .isEqualTo(withoutHours(command("today", "--journal", journal.toString())));
        for (String view : List.of("pots", "places", "bulbs")) {
            assertThat(command(view, "--json", "--journal", other.toString()))
                    .isEqualTo(command(view, "--json", "--journal", journal.toString()));
        }
        assertThat(Files.size(other)).isPositive();
    }

    /** What was done today bears the minute it was written in, and the two journals are written one after the other. */
    private static String withoutHours(String today) {
        return today.replaceAll("(?m)^  \\d\\d:\\d\\d ", "  ");
    }
}
