// SPDX-License-Identifier: Apache-2.0
package sillbook.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The folder that the build lays, as a stranger finds it. */
@ExtendWith(NeedsTmux.class)
class PackagedProgramIT {
    private static final Path PROGRAM = Path.of(System.getProperty("sillbook.program", "target/sillbook/bin/sillbook"));
    private static final Path FOLDER = PROGRAM.resolve("../..").normalize();
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
        assertThat(tmux("capture-pane", "-p")).startsWithIgnoringCase("sillbook");
    }

    @Test
    void namesTheLicenceOfEveryJarItShips() throws IOException {
        String page = Files.readString(FOLDER.resolve("licences.md"));
        try (Stream<Path> jars = Files.list(FOLDER.resolve("lib"))) {
            assertThat(jars.map(jar -> jar.getFileName().toString()).filter(name -> !name.equals("sillbook.jar")))
                    .isNotEmpty()
                    .allSatisfy(name -> assertThat(page).contains("`" + name + "`"));
        }
        assertThat(FOLDER.resolve("LICENSE")).content().contains("Apache License");
        assertThat(FOLDER.resolve("licences/LGPL-3.0.txt")).content().contains("GNU LESSER GENERAL PUBLIC LICENSE");
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
