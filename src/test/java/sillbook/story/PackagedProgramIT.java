// SPDX-License-Identifier: Apache-2.0
package sillbook.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The program as it was packaged, in a terminal. */
@ExtendWith(NeedsTmux.class)
class PackagedProgramIT {
    private static final Path PROGRAM = Path.of(System.getProperty("sillbook.program", "target/sillbook/bin/sillbook"));
    private final String socket = "sillbook-" + ProcessHandle.current().pid();

    @AfterEach
    void closeTheTerminal() throws Exception {
        tmux("kill-server");
    }

    @Test
    void saysItsNameInATerminal() throws Exception {
        String command = "'" + PROGRAM + "' --version; tmux wait-for -S said; cat";
        tmux("-f", "/dev/null", "new-session", "-d", "-x", "80", "-y", "24", command);
        tmux("wait-for", "said");
        assertThat(screen()).startsWithIgnoringCase("sillbook");
    }

    /** What stands on the screen, as soon as anything does: tmux may draw a moment after the program has spoken. */
    private String screen() throws IOException, InterruptedException {
        String shown = "";
        for (int look = 0; shown.isBlank() && look < 200; look++) {
            shown = tmux("capture-pane", "-p");
        }
        return shown;
    }

    /** Runs one tmux command on a server of our own and gives what it printed. */
    private String tmux(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of("tmux", "-L", socket));
        command.addAll(List.of(arguments));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        assertThat(process.waitFor(60, TimeUnit.SECONDS))
                .as("%s ended", command)
                .isTrue();
        return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
}
