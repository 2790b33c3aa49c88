// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import sillbook.app.Book;
import sillbook.exchange.PotsJson;
import sillbook.model.Journal;
import sillbook.model.Season;
import sillbook.season.Outlook;
import sillbook.season.PotNow;
import sillbook.words.Provisos;

/** Says where every pot of a season is. */
@Command(name = "pots", description = "Say where every pot and batch of the season is, and what comes next with it.")
final class PotsCommand extends View {
    @Mixin
    private final SeasonOption season = new SeasonOption();

    PotsCommand(Books books, Printer printer) {
        super(books, printer);
    }

    @Override
    Sight look(Book book) {
        Journal journal = book.readAll();
        Season looked = season.orElse(journal.seasonOf(book.today()));
        Outlook outlook = outlook(book);
        List<PotNow> pots = outlook.pots(looked);
        Provisos provisos = Provisos.of(journal, pots);
        PotText text = new PotText(journal, book.today());
        return new Sight(
                () -> PotsJson.list(journal, book.today(), looked, pots, provisos),
                () -> outlook.lines(looked).stream()
                        .map(row -> text.line(row, outlook))
                        .toList(),
                provisos.warnings(),
                "No pots in season " + journal.nameOf(looked)
                        + " yet. Write some: sillbook write '6 x Marrow Lane (tulip triumph) x5, waiting'");
    }
}
