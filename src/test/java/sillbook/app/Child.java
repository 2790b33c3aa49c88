// SPDX-License-Identifier: Apache-2.0
package sillbook.app;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A Java of its own that runs a main class of the tests. */
final class Child {
    private final Process process;
    private final BufferedReader lines;

    private Child(Process process) {
        this.process = process;
        this.lines = process.inputReader(StandardCharsets.UTF_8);
    }

    /** Starts it with this mask of permissions that new files do not get. */
    static Child start(String umask, Class<?> main, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of("sh", "-c", "umask " + umask + " && exec \"$@\"", "sh"));
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of(
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "--enable-native-access=ALL-UNNAMED",
                "-Dslf4j.internal.verbosity=ERROR",
                "-cp",
                classPath(),
                main.getName()));
        command.addAll(List.of(arguments));
        return new Child(new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start());
    }

    private static String classPath() {
        return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    }

    /** The next line it prints. */
    String line() throws IOException {
        String line = lines.readLine();
        if (line == null) {
            throw new IOException("it ended");
        }
        return line;
    }

    /** Kills it where it stands, and gives what more it had printed until then. */
    List<String> kill() throws InterruptedException {
        // By its handle: the process itself would close what is still to be read.
        process.toHandle().destroyForcibly();
        process.waitFor();
        return lines.lines().toList();
    }

    /** Waits for its end, and gives all it printed. */
    List<String> finish() throws InterruptedException {
        List<String> printed = lines.lines().toList();
        if (process.waitFor() != 0) {
            throw new IllegalStateException("it ended with " + process.exitValue() + ": " + printed);
        }
        return printed;
    }
}
