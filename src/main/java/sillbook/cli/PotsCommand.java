// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sillbook.app.Book;
import sillbook.exchange.PotsJson;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.season.Outlook;
import sillbook.season.PotNow;

/** Says where every pot of the season is. */
@Command(name = "pots", description = "Say where every pot of the season is, and what comes next with it.")
final class PotsCommand implements Callable<Integer> {
    private final Books books;
    private final Printer printer;

    @Option(names = "--json", description = "As JSON.")
    private boolean json;

    PotsCommand(Books books, Printer printer) {
        this.books = books;
        this.printer = printer;
    }

    @Override
    public Integer call() {
        return books.with(this::say);
    }

    private int say(Book book) {
        Journal journal = book.readAll();
        List<PotNow> pots =
                Outlook.of(journal, Handbook.standard(), book.today()).pots(journal.seasonOf(book.today()));
        if (json) {
            printer.json(PotsJson.list(journal, book.today(), pots));
        } else {
            PotText text = new PotText(journal, book.today());
            pots.forEach(pot -> printer.line(text.line(pot)));
            if (pots.isEmpty()) {
                printer.say("No pots this season yet.");
            }
        }
        return ExitCode.DONE;
    }
}
