// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.story.NeedsTmux;
import sillbook.story.Tmux;

/** The launcher, laid as the build lays it, with the sampler for a program. */
@ExtendWith(NeedsTmux.class)
class LauncherStoryTest {
    @TempDir
    private Path folder;

    private Path launcher;

    @BeforeEach
    void lay() throws IOException {
        launcher = folder.resolve("a program/bin/sillbook");
        Files.createDirectories(launcher.getParent());
        Files.copy(Path.of("src/main/launcher/sillbook"), launcher);
        makeExecutable(launcher);
        Path library = Files.createDirectories(folder.resolve("a program/lib"));
        layJar(library.resolve("sillbook.jar"));
    }

    private static void makeExecutable(Path file) throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    private static void layJar(Path jar) throws IOException {
        Manifest manifest = new Manifest();
        String classes = Stream.of(System.getProperty("java.class.path").split(File.pathSeparator, -1))
                .map(entry -> Path.of(entry).toUri().toString())
                .collect(Collectors.joining(" "));
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, Sampler.class.getName());
        manifest.getMainAttributes().put(Attributes.Name.CLASS_PATH, classes);
        try (OutputStream file = Files.newOutputStream(jar);
                JarOutputStream written = new JarOutputStream(file, manifest)) {
            written.finish();
        }
    }

    private Tmux start() {
        return Tmux.terminal().run(launcher.toString(), "DARK", faults());
    }

    private String faults() {
        return folder.resolve("faults of mine").toString();
    }

    private static ProcessHandle program(Tmux tmux) {
        List<ProcessHandle> started = tmux.processes();
        return started.get(started.size() - 1);
    }

    private static void kill(String signal, ProcessHandle process) throws Exception {
        new ProcessBuilder("kill", "-s", signal, String.valueOf(process.pid()))
                .start()
                .waitFor();
    }

    @Test
    void theProgramHasTheTerminalAndItsExitCodeIsPassedOn() {
        try (Tmux tmux = start()) {
            tmux.waitFor("0 inputs").press("Down").waitFor("line 2 of 200").press("q");
            assertThat(tmux.exitCode()).isZero();
        }
        try (Tmux tmux = start()) {
            tmux.waitFor("0 inputs").press("x").waitFor("stopped by a fault");
            assertThat(tmux.exitCode()).isEqualTo(1);
            assertThat(Path.of(faults())).isDirectoryContaining("glob:**.txt");
        }
    }

    @Test
    void killedOutrightItStillGivesTheTerminalBack() throws Exception {
        try (Tmux tmux = shell()) {
            kill("KILL", program(tmux));
            awaitPrompt(tmux)
                    .type("echo typed $((6*7)), code $?")
                    .press("Enter")
                    .waitFor("typed 42, code 137");
            assertThat(tmux.isOnAlternateScreen()).isFalse();
            assertThat(tmux.cursor()).isNotEqualTo("hidden");
            assertThat(tmux.screen()).contains("echo typed $((6*7))");
        }
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"TERM, 143", "HUP, 129", "INT, 130"})
    void aSignalToTheLauncherEndsTheProgram(String signal, int code) throws Exception {
        try (Tmux tmux = start()) {
            tmux.waitFor("0 inputs");
            ProcessHandle program = program(tmux);
            kill(signal, tmux.processes().get(0));
            assertThat(tmux.exitCode()).isEqualTo(code);
            assertThat(program.isAlive()).isFalse();
            assertThat(tmux.isOnAlternateScreen()).isFalse();
        }
    }

    @Test
    void stoppedTheLauncherStopsTooAndBothComeBack() throws Exception {
        try (Tmux tmux = shell()) {
            awaitPrompt(tmux.press("Down").waitFor("line 2 of 200").press("C-z"));
            tmux.type("fg")
                    .press("Enter")
                    .waitFor("line 2 of 200")
                    .press("Down")
                    .waitFor("line 3 of 200");
            awaitPrompt(tmux.press("q")).type("echo code $?").press("Enter").waitFor("code 0");
        }
    }

    private Tmux shell() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("s"), launcher);
        Tmux tmux = Tmux.terminal().environment("PS1", "shell> ").run("sh", "-i");
        return awaitPrompt(tmux).type(link + " DARK /none").press("Enter").waitFor("0 inputs");
    }

    private static Tmux awaitPrompt(Tmux tmux) {
        return tmux.waitUntil("the shell is ready", screen -> screen.strip().endsWith("shell>"));
    }

    @Test
    void aJavaThatIsTooOldIsPassedOver() throws IOException {
        Path old = folder.resolve("old");
        Files.createDirectories(old.resolve("bin"));
        Files.writeString(old.resolve("release"), "IMPLEMENTOR=\"x\"\nJAVA_VERSION=\"11.0.2\"\n");
        makeExecutable(Files.writeString(old.resolve("bin/java"), "#!/bin/sh\necho old\n"));
        try (Tmux tmux =
                Tmux.terminal().environment("JAVA_HOME", old.toString()).run(launcher.toString(), "DARK", faults())) {
            tmux.waitFor("0 inputs");
        }
    }

    @Test
    void withoutATerminalItPassesEverythingThrough() throws Exception {
        Process process = new ProcessBuilder(launcher.toString())
                .redirectErrorStream(true)
                .start();
        process.getOutputStream().close();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

        assertThat(process.waitFor()).isEqualTo(2);
        assertThat(printed).isEqualTo("usage: Sampler GROUND FOLDER, in a terminal\n");
    }
}
