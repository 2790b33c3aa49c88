// SPDX-License-Identifier: Apache-2.0
package sillbook.benchmark;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.Path;
import java.util.Locale;

/**
 * How long Seasons takes to open on a journal of many winters, and the effects after it. Each run is a start of the program: what was once
 * worked out is kept while it runs.
 */
record SeasonsSpeed(String program) {
    private static final int RUNS = 5;
    private static final byte[] COUNTED = " winters, ".getBytes(UTF_8);

    /** The answer that stays comes some time after the first, so a picture is the last only when nothing follows for long. */
    private static final long LAST_QUIET_MILLIS = 3_000;

    private static final long LIMIT_MILLIS = 60_000;

    String measure(Path journal) {
        Sample opened = new Sample();
        Sample staying = new Sample();
        for (int run = 0; run < RUNS; run++) {
            try (PseudoTerminal terminal = PseudoTerminal.start(program + " --journal " + journal, 120, 40)) {
                terminal.untilStill(LAST_QUIET_MILLIS, LIMIT_MILLIS);
                long begun = System.nanoTime();
                terminal.press("6");
                opened.add(terminal.untilSaid(COUNTED, LIMIT_MILLIS) - begun);
                terminal.untilStill(300, LIMIT_MILLIS);
                terminal.press("v");
                terminal.untilStill(300, LIMIT_MILLIS);
                begun = System.nanoTime();
                terminal.press("e");
                staying.add(terminal.untilStill(LAST_QUIET_MILLIS, LIMIT_MILLIS).lastByteNanos() - begun);
                terminal.press("q");
            }
        }
        return String.format(
                Locale.ROOT,
                "seasons         opens in %.0f ms, at worst %.0f; effects stay after %.0f ms, at worst %.0f; medians of %d",
                opened.medianMillis(),
                opened.percentileMillis(100),
                staying.medianMillis(),
                staying.percentileMillis(100),
                RUNS);
    }
}
