// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.io.InputStream;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sillbook.exchange.CoverFile;
import sillbook.exchange.CoverJson;
import sillbook.reckon.cover.Plan;
import sillbook.reckon.cover.Planner;
import sillbook.reckon.cover.Watch;
import sillbook.words.CoverFigures;
import sillbook.words.Provisos;

/** Works out when to bring pots in so that a season is in bloom, without a journal. */
@Command(
        name = "cover",
        description = {
            "Work out on which days to bring pots in so that a season is in bloom, from a JSON file of days, pots and room;"
                    + " - reads the standard input.",
            "The fewest days without bloom come first, then the fewest pots, then the least overlap. Each is said to be"
                    + " proven, or how low it could be."
        })
final class CoverCommand implements Callable<Integer> {
    private static final double A_DAY = 86_400;

    private final Printer printer;
    private final InputStream in;

    @Parameters(paramLabel = "FILE", description = "The season, its pots and its room, as JSON.")
    private String file = "";

    @Option(
            names = "--seconds",
            paramLabel = "S",
            description = "Take the best found after so long; else after a fixed effort, a few seconds.")
    private Optional<String> seconds = Optional.empty();

    @Option(names = "--progress", description = "Say on standard error what has been found so far.")
    private boolean progress;

    @Mixin
    private final JsonOption json = new JsonOption();

    CoverCommand(Printer printer, InputStream in) {
        this.printer = printer;
        this.in = in;
    }

    @Override
    public Integer call() {
        Optional<Duration> limit = seconds.map(CoverCommand::duration);
        FileIn given = new FileIn(file, in);
        CoverFile asked = given.told(given.heard(CoverFile::read, CoverFile::read));
        long effort = limit.isPresent() ? Long.MAX_VALUE : Planner.USUAL_EFFORT;
        Plan plan = Planner.plan(asked.task(), effort, new Onlooker(limit));
        Provisos provisos = new Provisos(List.of(), asked.assumed());
        new Sight(
                        () -> CoverJson.write(asked.task(), plan, provisos),
                        () -> new CoverFigures(asked.task(), plan).lines(),
                        List.of(),
                        "")
                .show(json, printer);
        return ExitCode.DONE;
    }

    private static Duration duration(String text) {
        double said = Given.number(text);
        if (!(said > 0)) {
            throw new Misused("'" + text + "' is no time to search in. Write a number of seconds above 0.");
        }
        return Duration.ofMillis(Math.max(1, Math.round(1000 * Math.min(said, A_DAY))));
    }

    /** Ends the search in time, and tells of it. */
    private final class Onlooker implements Watch {
        private final Optional<Duration> limit;
        private final long begun = System.nanoTime();
        private String told = "";

        Onlooker(Optional<Duration> limit) {
            this.limit = limit;
        }

        @Override
        public boolean wantsStop() {
            return limit.map(time -> System.nanoTime() - begun > time.toNanos()).orElse(false);
        }

        @Override
        public void found(Plan best) {
            String now = CoverFigures.soFar(best);
            if (progress && !now.equals(told)) {
                told = now;
                printer.say(now);
            }
        }
    }
}
