// SPDX-License-Identifier: Apache-2.0
package sillbook.benchmark;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Locale;

/** From a key to the last byte of the picture that answers it, beside the pager {@code less} scrolling by a page. */
final class KeyLatency {
    private static final int KEYS = 200;
    private static final int DISCARDED = 20;
    private static final long QUIET_MILLIS = 40;

    private final String program;
    private final Path folder;

    KeyLatency(String program, Path folder) {
        this.program = program;
        this.folder = folder;
    }

    String measure(Path journal) {
        String open = program + " --journal " + journal;
        Sample lines = keys(open, "\u001b[B", "\u001b[A", "2");
        Sample pages = keys(open, "1", "2", "");
        Sample pager = keys("less " + longText(), " ", "b", "");
        return "key to repaint\n  cursor line   " + lines.say() + "\n  another page  " + pages.say()
                + "\n  less, a page  "
                + pager.say()
                + String.format(
                        Locale.ROOT,
                        "%n  ratio of medians, another page to less: %.1f",
                        pages.medianMillis() / pager.medianMillis());
    }

    private static Sample keys(String command, String there, String back, String first) {
        Sample sample = new Sample();
        try (PseudoTerminal terminal = PseudoTerminal.start(command, 120, 40)) {
            terminal.untilStill(1000, 20_000);
            if (!first.isEmpty()) {
                terminal.press(first);
                terminal.untilStill(300, 5_000);
            }
            for (int key = 0; key < KEYS; key++) {
                long begin = System.nanoTime();
                terminal.press(key % 2 == 0 ? there : back);
                PseudoTerminal.Burst answer = terminal.untilStill(QUIET_MILLIS, 2_000);
                if (key >= DISCARDED && answer.length() > 0) {
                    sample.add(answer.lastByteNanos() - begin);
                }
            }
            terminal.press("q");
        }
        return sample;
    }

    private Path longText() {
        try {
            String line = "the quick brown fox jumps over the lazy dog, and again, and again, and once more";
            return Files.write(folder.resolve("long.txt"), Collections.nCopies(4_000, line));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
