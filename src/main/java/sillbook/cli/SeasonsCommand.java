// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import sillbook.app.Book;
import sillbook.exchange.SeasonsJson;
import sillbook.model.Journal;
import sillbook.season.past.By;
import sillbook.season.past.Foretellings;
import sillbook.season.past.Summary;
import sillbook.season.past.Tallied;
import sillbook.season.past.Winters;
import sillbook.words.SummaryWords;
import sillbook.words.TallyWords;

/** Says what the winters came to, and what did well in them. */
@Command(
        name = "seasons",
        description = {
            "Say what each winter came to, and what did well: plain counts, the best first, and what was noted last.",
            "With a season, of that one alone."
        })
final class SeasonsCommand extends View {
    @Mixin
    private final SeasonOption season = new SeasonOption();

    @Option(
            names = "--by",
            paramLabel = "WHAT",
            description = "variety, purchase, mix or place; variety if not said. The place is that of the cold.")
    private String by = "variety";

    SeasonsCommand(Books books, Printer printer) {
        super(books, printer);
    }

    @Override
    Sight look(Book book) {
        By what = Given.read(TallyWords.BYS.parse(by));
        Journal journal = book.readAll();
        Winters winters = Winters.of(journal, book.today());
        Foretellings foretellings = Foretellings.of(journal, book.keptWindows(), book.today());
        List<Summary> summaries = winters.seasons().stream()
                .filter(one ->
                        season.given().filter(asked -> !asked.equals(one)).isEmpty())
                .map(winters::summary)
                .toList();
        List<Tallied> records = season.given().map(one -> winters.by(what, one)).orElseGet(() -> winters.by(what));
        return new Sight(
                () -> SeasonsJson.write(journal, what, summaries, foretellings, records),
                () -> lines(journal, summaries, foretellings, records),
                List.of(),
                "No pot was grown yet. What a winter came to stands here from its first potted pot on.");
    }

    private static List<String> lines(
            Journal journal, List<Summary> summaries, Foretellings foretellings, List<Tallied> records) {
        SummaryWords words = new SummaryWords(journal);
        return Stream.concat(
                        summaries.stream().map(one -> words.line(one, foretellings.of(one.winter()))),
                        records.stream().map(new TallyWords(journal)::line))
                .toList();
    }
}
