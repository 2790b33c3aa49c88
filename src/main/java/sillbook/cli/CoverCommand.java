// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.io.InputStream;
import java.util.List;
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
    private final Printer printer;
    private final InputStream in;

    @Parameters(paramLabel = "FILE", description = "The season, its pots and its room, as JSON.")
    private String file = "";

    @Mixin
    private final SearchTime time = new SearchTime();

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
        time.begin();
        FileIn given = new FileIn(file, in);
        CoverFile asked = given.told(given.heard(CoverFile::read, CoverFile::read));
        Plan plan = Planner.plan(asked.task(), time.effort(), new Onlooker());
        Provisos provisos = new Provisos(List.of(), asked.assumed());
        new Sight(
                        () -> CoverJson.write(asked.task(), plan, provisos),
                        () -> new CoverFigures(asked.task(), plan).lines(),
                        List.of(),
                        "")
                .show(json, printer);
        return ExitCode.DONE;
    }

    /** Ends the search in time, and tells of it. */
    private final class Onlooker implements Watch {
        private final News news = new News(printer);

        @Override
        public boolean wantsStop() {
            return time.isOver();
        }

        @Override
        public void found(Plan best) {
            if (progress) {
                news.tell(CoverFigures.soFar(best));
            }
        }
    }
}
