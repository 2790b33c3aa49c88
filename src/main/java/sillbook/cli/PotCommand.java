// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import sillbook.app.Book;
import sillbook.exchange.PotsJson;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.Season;
import sillbook.season.Outlook;
import sillbook.season.PotNow;
import sillbook.words.Provisos;

/** Says all there is of one pot. */
@Command(
        name = "pot",
        description = {
            "Say what is ahead of one pot, and all that has been.",
            "A label is looked for in this season, then in the one before."
        })
final class PotCommand extends View {
    @Parameters(paramLabel = "LABEL", description = "Its label, as T4.")
    private String label = "";

    @Mixin
    private final SeasonOption season = new SeasonOption();

    PotCommand(Books books, Printer printer) {
        super(books, printer);
    }

    @Override
    Sight look(Book book) {
        Journal journal = book.readAll();
        Outlook outlook = outlook(book);
        PotNow now = outlook.pot(
                find(journal, outlook, journal.seasonOf(book.today())).id());
        Provisos provisos = Provisos.of(journal, List.of(now));
        return new Sight(
                () -> PotsJson.one(journal, outlook, now, provisos),
                () -> new PotText(journal, book.today()).card(now, outlook),
                provisos.warnings(),
                "");
    }

    private Pot find(Journal journal, Outlook outlook, Season current) {
        Stream<Season> seasons = season.given().map(Stream::of).orElseGet(() -> Stream.of(current, current.previous()));
        Optional<Pot> found = seasons.flatMap(one -> journal.pot(one, label).or(() -> livingOn(outlook, one)).stream())
                .findFirst();
        return found.orElseThrow(() -> {
            Season looked = season.orElse(current);
            return new CouldNot("There is no pot '" + label + "' in season " + journal.nameOf(looked)
                    + ". 'sillbook pots' lists those there are.");
        });
    }

    /** A plant of an earlier season that lived in that one, too. */
    private Optional<Pot> livingOn(Outlook outlook, Season in) {
        return outlook.pots(in).stream()
                .map(now -> now.life().pot())
                .filter(pot -> pot.label().equalsIgnoreCase(label))
                .findFirst();
    }
}
