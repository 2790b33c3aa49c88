// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sillbook.app.Book;
import sillbook.exchange.TodayJson;
import sillbook.handbook.Handbook;
import sillbook.season.Outlook;
import sillbook.season.Today;

/** Says what a day asks for. */
@Command(name = "today", description = "Say what is late, ready and due, what to check, and what comes next.")
final class TodayCommand implements Callable<Integer> {
    private final Books books;
    private final Printer printer;

    @Option(names = "--on", paramLabel = "DAY", description = "Another day than today: 2027-01-12, fri, +7.")
    private Optional<String> on = Optional.empty();

    @Option(names = "--json", description = "As JSON.")
    private boolean json;

    TodayCommand(Books books, Printer printer) {
        this.books = books;
        this.printer = printer;
    }

    @Override
    public Integer call() {
        return books.with(this::say);
    }

    private int say(Book book) {
        LocalDate day = on.map(text -> DayOption.ahead(text, book.today())).orElseGet(book::today);
        Today today = Outlook.of(book.readAll(), Handbook.standard(), day).today();
        print(book, today, json, printer);
        return ExitCode.DONE;
    }

    static void print(Book book, Today today, boolean json, Printer printer) {
        if (json) {
            printer.json(TodayJson.write(book.journal(), today));
        } else {
            printer.lines(TodayText.of(book.journal(), today));
        }
    }
}
