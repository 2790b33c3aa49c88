// SPDX-License-Identifier: Apache-2.0
package sillbook.story;

import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;

/**
 * A program in a real terminal: tmux, which reads its bytes and knows nothing of how they were made. A story presses keys, waits for lines
 * and looks at the screen; it never sleeps. Test classes that use it say {@code @ExtendWith(NeedsTmux.class)}.
 */
public final class Tmux implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(30);
    private static final AtomicInteger STARTED = new AtomicInteger();
    private static final List<String> CONFIGURATION = List.of(
            "set -g status off",
            "set -g default-terminal tmux-256color",
            "set -s escape-time 0",
            "set -g history-limit 0",
            "set -g default-shell /bin/sh");

    private final String socket;
    private final Path folder;

    private Tmux(String socket, Path folder) {
        this.socket = socket;
        this.folder = folder;
    }

    /** What a terminal must be told before a program is started in it. */
    public static final class Start {
        private final Map<String, String> environment = new TreeMap<>(Map.of("LC_ALL", "C.UTF-8"));
        private int columns = 80;
        private int rows = 24;

        public Start size(int wantedColumns, int wantedRows) {
            columns = wantedColumns;
            rows = wantedRows;
            return this;
        }

        /** Sets a variable of the program's environment; an empty value unsets it. */
        public Start environment(String name, String value) {
            environment.put(name, value);
            return this;
        }

        /** Starts a program; its arguments may hold anything. */
        public Tmux run(String... command) {
            int number = STARTED.incrementAndGet();
            String socket = "sillbook-" + ProcessHandle.current().pid() + "-" + number;
            try {
                Path folder = Files.createTempDirectory("sillbook-story");
                Path configuration = Files.write(folder.resolve("tmux.conf"), CONFIGURATION);
                Tmux tmux = new Tmux(socket, folder);
                tmux.tmux(
                        "-f",
                        configuration.toString(),
                        "new-session",
                        "-d",
                        "-x",
                        String.valueOf(columns),
                        "-y",
                        String.valueOf(rows),
                        line(folder.resolve("exit"), command));
                return tmux;
            } catch (IOException broken) {
                throw new UncheckedIOException("starting a terminal", broken);
            }
        }

        private String line(Path exit, String... command) {
            StringBuilder line = new StringBuilder("env");
            environment.forEach((name, value) ->
                    line.append(' ').append(value.isEmpty() ? "-u " + quoted(name) : quoted(name + "=" + value)));
            Arrays.stream(command).forEach(word -> line.append(' ').append(quoted(word)));
            return line + "; echo $? >" + quoted(exit.toString()) + "; exec cat";
        }

        private static String quoted(String word) {
            return "'" + word.replace("'", "'\\''") + "'";
        }
    }

    /** A terminal of 80 by 24 in a UTF-8 locale, unless told otherwise. */
    public static Start terminal() {
        return new Start();
    }

    /** Presses keys by tmux's names: {@code Down}, {@code Enter}, {@code Escape}, {@code C-z}, {@code F1}, {@code PPage}. */
    public Tmux press(String... keys) {
        List<String> command = new ArrayList<>(List.of("send-keys"));
        command.addAll(List.of(keys));
        tmux(command.toArray(String[]::new));
        return this;
    }

    /** Types text, letter by letter as a person would, only faster. */
    public Tmux type(String text) {
        tmux("send-keys", "-l", text);
        return this;
    }

    /** Sends bytes, as numbers from 0 to 255, in one go. */
    public Tmux send(int... bytes) {
        List<String> command = new ArrayList<>(List.of("send-keys", "-H"));
        Arrays.stream(bytes).mapToObj(Integer::toHexString).forEach(command::add);
        tmux(command.toArray(String[]::new));
        return this;
    }

    /** Pastes text the way a terminal does. */
    public Tmux paste(String text) {
        tmux("set-buffer", text);
        tmux("paste-buffer", "-p", "-r");
        return this;
    }

    public Tmux resize(int columns, int rows) {
        tmux("resize-window", "-x", String.valueOf(columns), "-y", String.valueOf(rows));
        return this;
    }

    /** Waits until the screen holds this text. */
    public Tmux waitFor(String text) {
        return waitUntil("the screen shows '" + text + "'", screen -> screen.contains(text));
    }

    /** Waits until the screen does not hold this text any more. */
    public Tmux waitForNo(String text) {
        return waitUntil("the screen shows no '" + text + "'", screen -> !screen.contains(text));
    }

    /** Waits until what stands on the screen is as wanted; fails with what stood there last. */
    public Tmux waitUntil(String wanted, Predicate<String> isSo) {
        long deadline = System.nanoTime() + PATIENCE.toNanos();
        String seen = screen();
        while (!isSo.test(seen)) {
            if (System.nanoTime() - deadline > 0) {
                fail("waited in vain until " + wanted + "; there stood:\n" + seen);
            }
            seen = screen();
        }
        return this;
    }

    /** Waits until the program has ended and gives its exit code; the terminal stays open, with what was written last. */
    public int exitCode() {
        Path exit = folder.resolve("exit");
        long deadline = System.nanoTime() + PATIENCE.toNanos();
        try {
            while (!Files.exists(exit) || !Files.readString(exit).endsWith("\n")) {
                if (System.nanoTime() - deadline > 0) {
                    fail("the program does not end; on the screen stood:\n" + screen());
                }
                Thread.onSpinWait();
            }
            return Integer.parseInt(Files.readString(exit).strip());
        } catch (IOException broken) {
            throw new UncheckedIOException("looking for the exit code", broken);
        }
    }

    /** What stands on the screen, a line each, without blanks at their ends. */
    public String screen() {
        return tmux("capture-pane", "-p");
    }

    /** The same with the sequences that colour it. */
    public String colouredScreen() {
        return tmux("capture-pane", "-p", "-e");
    }

    /** Column and row of the cursor, from 0, as {@code column,row}; {@code hidden} where it is. */
    public String cursor() {
        return ask("#{?cursor_flag,#{cursor_x}#,#{cursor_y},hidden}");
    }

    /** Whether a program draws on the alternate screen. */
    public boolean isOnAlternateScreen() {
        return ask("#{alternate_on}").equals("1");
    }

    /** The program that was started, and the programs it started itself, the outermost first. */
    public List<ProcessHandle> processes() {
        return ProcessHandle.of(Long.parseLong(ask("#{pane_pid}"))).stream()
                .flatMap(ProcessHandle::descendants)
                .toList();
    }

    private String ask(String format) {
        return tmux("display-message", "-p", format).strip();
    }

    @Override
    public void close() {
        tmux("kill-server");
        try {
            Files.deleteIfExists(folder.resolve("tmux.conf"));
            Files.deleteIfExists(folder.resolve("exit"));
            Files.deleteIfExists(folder);
        } catch (IOException left) {
            throw new UncheckedIOException("clearing up after a terminal", left);
        }
    }

    private String tmux(String... arguments) {
        List<String> command = new ArrayList<>(List.of("tmux", "-L", socket));
        command.addAll(List.of(arguments));
        try {
            Process process =
                    new ProcessBuilder(command).redirectErrorStream(true).start();
            process.getOutputStream().close();
            String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            if (process.waitFor() != 0) {
                fail(command + " says: " + printed);
            }
            return printed;
        } catch (IOException broken) {
            throw new UncheckedIOException(String.join(" ", command), broken);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("a story was interrupted", stopped);
        }
    }
}
