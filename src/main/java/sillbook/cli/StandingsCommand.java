// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sillbook.app.Book;
import sillbook.exchange.StandingsJson;
import sillbook.model.Journal;
import sillbook.season.past.Merits;
import sillbook.season.past.Trials;
import sillbook.season.past.Winters;
import sillbook.words.InfluenceWords;
import sillbook.words.MeritWords;

/** Says which varieties, potting mixes or places were worth it. */
@Command(
        name = "standings",
        description = {
            "Say which varieties, potting mixes or places were worth it, each with what else was different taken out.",
            "What cannot be told apart is said first, with the pot that would tell."
        })
final class StandingsCommand extends View {
    @Option(names = "--by", paramLabel = "WHAT", description = "variety, mix or place; variety if not said.")
    private String by = "variety";

    StandingsCommand(Books books, Printer printer) {
        super(books, printer);
    }

    @Override
    Sight look(Book book) {
        var trait = Given.read(InfluenceWords.trait(by));
        Journal journal = book.readAll();
        Trials trials = Trials.of(Winters.of(journal, book.today()), journal);
        Merits merits = trials.merits(trait, trials.averaged());
        return new Sight(
                () -> StandingsJson.write(journal, trials, merits),
                () -> new MeritWords(journal).lines(trials, merits),
                List.of(),
                MeritWords.said(Trials.Silence.NO_SCORE));
    }
}
