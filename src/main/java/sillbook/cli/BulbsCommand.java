// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sillbook.app.Book;
import sillbook.exchange.BulbsJson;
import sillbook.model.Journal;
import sillbook.model.Variety;
import sillbook.words.Lengths;

/** Says which varieties the book has. */
@Command(name = "bulbs", description = "Say which varieties the book has, with their kind and height.")
final class BulbsCommand implements Callable<Integer> {
    private final Books books;
    private final Printer printer;

    @Option(names = "--json", description = "As JSON.")
    private boolean json;

    BulbsCommand(Books books, Printer printer) {
        this.books = books;
        this.printer = printer;
    }

    @Override
    public Integer call() {
        return books.with(this::say);
    }

    private int say(Book book) {
        Journal journal = book.readAll();
        if (json) {
            printer.json(BulbsJson.write(journal));
            return ExitCode.DONE;
        }
        List<Variety> varieties = journal.varieties().all().stream()
                .sorted(Comparator.comparing(Variety::name))
                .toList();
        varieties.forEach(variety -> printer.line(line(journal, variety)));
        if (varieties.isEmpty()) {
            printer.say("No variety yet. Write one: sillbook write 'variety Marrow Lane, tulip triumph'");
        }
        return ExitCode.DONE;
    }

    private static String line(Journal journal, Variety variety) {
        String height = variety.height()
                .map(tall -> ", " + Lengths.say(tall, journal.settings().lengths()))
                .orElse("");
        return "'" + variety.name() + "', " + variety.kind() + height;
    }
}
