// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.time.Duration;
import java.util.Optional;
import picocli.CommandLine.Option;
import sillbook.reckon.cover.Planner;

/** How long a search may take. */
final class SearchTime {
    private static final double A_DAY = 86_400;

    @Option(
            names = "--seconds",
            paramLabel = "S",
            description = "Take the best found after so long; else after a fixed effort, five to fifteen seconds.")
    private Optional<String> seconds = Optional.empty();

    private Optional<Duration> limit = Optional.empty();
    private long begun;

    /** From now on the time runs. */
    void begin() {
        limit = seconds.map(SearchTime::duration);
        begun = System.nanoTime();
    }

    private static Duration duration(String text) {
        double said = Given.number(text);
        if (!(said > 0)) {
            throw new Misused("'" + text + "' is no time to search in. Write a number of seconds above 0.");
        }
        return Duration.ofMillis(Math.max(1, Math.round(1000 * Math.min(said, A_DAY))));
    }

    /** The most effort; where there is a limit in seconds, that is the only one. */
    long effort() {
        return limit.isPresent() ? Long.MAX_VALUE : Planner.USUAL_EFFORT;
    }

    boolean isOver() {
        return limit.map(time -> System.nanoTime() - begun > time.toNanos()).orElse(false);
    }
}
