// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Mixin;
import sillbook.app.Book;
import sillbook.handbook.Handbook;
import sillbook.season.Outlook;

/** A command that shows something of the journal, as plain lines or as JSON, and changes nothing. */
abstract class View implements Callable<Integer> {
    private final Books books;
    private final Printer printer;

    @Mixin
    private final JsonOption json = new JsonOption();

    View(Books books, Printer printer) {
        this.books = books;
        this.printer = printer;
    }

    @Override
    public final Integer call() {
        return books.with(book -> {
            look(book).show(json, printer);
            return ExitCode.DONE;
        });
    }

    /** What there is to show. */
    abstract Sight look(Book book);

    /** All that is true of the journal today. */
    static Outlook outlook(Book book) {
        return Outlook.of(book.readAll(), Handbook.standard(), book.today());
    }
}
