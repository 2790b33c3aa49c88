// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import sillbook.ui.draw.Size;

/**
 * The terminal's settings, by way of {@code stty}: portable, and as quick as a call into the system library in a young JVM.
 *
 * @param saved as {@code stty -g} printed them, to be given back
 */
record Stty(String saved, Size size) {
    /**
     * Keys come one by one, unechoed; Ctrl-C, Ctrl-Z and the like come as keys, and Ctrl-S stops nothing. Enter stays a line feed: the key
     * tables know it so.
     */
    private static final String RAW = "stty -icanon -echo -isig -iexten -ixon icrnl min 1 time 0";

    /** Both ways, and of a kind that has a screen to draw on. */
    private static final String IS_TERMINAL = "test -t 0 && test -t 1 && test \"$TERM\" != dumb";

    private static final Size USUAL = new Size(80, 24);

    /** Of no terminal: nothing is saved, and nothing comes of giving it back. */
    static final Stty NONE = new Stty("", USUAL);

    static boolean isTerminal() {
        return run(IS_TERMINAL).isPresent();
    }

    /** Makes the terminal raw, in one process; empty where input or output is none. What is printed goes by the error stream: output is tested. */
    static Optional<Stty> takeTerminal() {
        return run(IS_TERMINAL + " && { stty -g; stty size; " + RAW + "; } >&2")
                .map(printed -> printed.lines().toList())
                .filter(lines -> lines.size() >= 2)
                .map(lines -> new Stty(lines.get(0).strip(), parse(lines.get(1))));
    }

    static Size currentSize() {
        return run("stty size >&2").map(Stty::parse).orElse(USUAL);
    }

    void makeRaw() {
        run(RAW);
    }

    void restore() {
        if (!saved.isEmpty()) {
            run("stty " + saved);
        }
    }

    /** Stops this program and whoever started it with it, as the terminal itself would; returns once they go on. */
    static void stopUntilContinued() {
        run("kill -s TSTP 0");
    }

    /** As {@code stty size} prints it: rows, then columns; a terminal that does not know says 0 0. */
    private static Size parse(String printed) {
        List<String> numbers = List.of(printed.strip().split(" ", -1));
        if (numbers.size() != 2 || !numbers.stream().allMatch(it -> it.matches("[1-9][0-9]{0,3}"))) {
            return USUAL;
        }
        return new Size(Integer.parseInt(numbers.get(1)), Integer.parseInt(numbers.get(0)));
    }

    /** What a shell command on this terminal wrote to its error stream, or empty when it failed. */
    private static Optional<String> run(String command) {
        try {
            Process process = new ProcessBuilder("sh", "-c", command)
                    .redirectInput(ProcessBuilder.Redirect.INHERIT)
                    .redirectOutput(ProcessBuilder.Redirect.INHERIT)
                    .start();
            String printed = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
            return process.waitFor() == 0 ? Optional.of(printed) : Optional.empty();
        } catch (IOException noShell) {
            return Optional.empty();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }
}
