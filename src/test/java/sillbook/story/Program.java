// SPDX-License-Identifier: Apache-2.0
package sillbook.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;

/**
 * The packaged program over one journal, with all it writes in a folder of its own.
 *
 * @param home the folder
 */
record Program(Path home) {
    static final String FILE = System.getProperty("sillbook.program", "target/sillbook/bin/sillbook");

    private String journal() {
        return home.resolve("winter.sillbook").toString();
    }

    private String cache() {
        return home.resolve("cache").toString();
    }

    /** Opens the screens in a terminal. */
    Tmux open() {
        return Tmux.terminal()
                .environment("HOME", home.toString())
                .environment("SILLBOOK_JOURNAL", journal())
                .environment("XDG_CACHE_HOME", cache())
                .environment("TZ", zone())
                .environment("XDG_STATE_HOME", home.resolve("state").toString())
                .run(FILE);
    }

    /** That of the tests, so that both have the same day at any hour. */
    private static String zone() {
        return ZoneId.systemDefault().getId();
    }

    /** Runs a command, which must succeed, and gives what it said. */
    String run(String... arguments) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(FILE);
        builder.command().addAll(List.of(arguments));
        builder.environment().put("SILLBOOK_JOURNAL", journal());
        builder.environment().put("XDG_CACHE_HOME", cache());
        builder.environment().put("TZ", zone());
        Process process = builder.redirectErrorStream(true).start();
        process.getOutputStream().close();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        return said;
    }

    /** Writes lines into the journal, one after the other. */
    void write(String... lines) throws IOException, InterruptedException {
        for (String line : lines) {
            run("write", line);
        }
    }

    /** Leaves the screens as a grower does. */
    static void leave(Tmux terminal) {
        terminal.press("q").waitFor("Enter leaves").press("Enter");
        assertThat(terminal.exitCode()).isZero();
    }
}
