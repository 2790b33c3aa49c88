// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sillbook.app.Book;
import sillbook.exchange.PotsJson;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.season.Outlook;
import sillbook.season.PotNow;

/** Says all there is of one pot. */
@Command(name = "pot", description = "Say what is ahead of one pot, and all that has been.")
final class PotCommand implements Callable<Integer> {
    private final Books books;
    private final Printer printer;

    @Parameters(paramLabel = "LABEL", description = "Its label, as T4.")
    private String label = "";

    @Option(names = "--json", description = "As JSON.")
    private boolean json;

    PotCommand(Books books, Printer printer) {
        this.books = books;
        this.printer = printer;
    }

    @Override
    public Integer call() {
        return books.with(this::say);
    }

    private int say(Book book) {
        Journal journal = book.readAll();
        Optional<Pot> pot = journal.pot(journal.seasonOf(book.today()), label);
        if (pot.isEmpty()) {
            printer.say("There is no pot " + label + " in this season. 'sillbook pots' lists them.");
            return ExitCode.COULD_NOT;
        }
        PotNow now = Outlook.of(journal, Handbook.standard(), book.today())
                .pot(pot.get().id());
        if (json) {
            printer.json(PotsJson.one(journal, book.today(), now));
        } else {
            printer.lines(new PotText(journal, book.today()).card(now));
        }
        return ExitCode.DONE;
    }
}
