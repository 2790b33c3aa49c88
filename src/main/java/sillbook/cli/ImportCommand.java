// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.io.InputStream;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sillbook.app.Bookshelf;
import sillbook.app.Page;
import sillbook.exchange.ListJson;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.season.Outlook;
import sillbook.words.Counts;
import sillbook.words.Heard;
import sillbook.words.line.Bench;
import sillbook.words.list.ListReading;
import sillbook.words.list.ListSort;
import sillbook.words.list.ListedRow;
import sillbook.words.list.Table;

/** Imports a list of bulbs, or the file of a thermometer, as one step. */
@Command(
        name = "import",
        description = {
            "Import a list of varieties or purchases from a CSV file, its columns named in the first row; - reads"
                    + " the standard input.",
            "Every row is said back: new, same, changed or wrong. The whole list is one step, which undo takes back;"
                    + " while a row is wrong, nothing is imported.",
            "With --place it is the file of a thermometer that lies there. What it was understood as is said first;"
                    + " --dates, --column and the like say it better."
        })
final class ImportCommand implements Callable<Integer> {
    private final Books books;
    private final Printer printer;
    private final InputStream in;

    @Parameters(
            paramLabel = "FILE",
            description =
                    "A list: separated values in UTF-8. A thermometer's file: any that has an instant and a temperature in a line.")
    private String file = "";

    @Option(
            names = "--as",
            paramLabel = "SORT",
            description = "What each row of a list is, always wanted: varieties or purchases.")
    private Optional<String> sort = Optional.empty();

    @Option(names = "--dry-run", description = "Only say what it would come to; keep nothing.")
    private boolean dryRun;

    @Option(names = "--place", paramLabel = "NAME", description = "Where the thermometer lies whose file it is.")
    private Optional<String> place = Optional.empty();

    @Mixin
    private final LoggerOptions logger = new LoggerOptions();

    @Mixin
    private final JsonOption json = new JsonOption();

    ImportCommand(Books books, Printer printer, InputStream in) {
        this.books = books;
        this.printer = printer;
        this.in = in;
    }

    @Override
    public Integer call() {
        if (place.isPresent()) {
            return thermometer(place.get());
        }
        if (logger.areGiven()) {
            throw new Misused("That is said of a thermometer's file. Name where it lies with --place.");
        }
        ListSort of = sort();
        Table table = told(given().table());
        ListReading tried = told(read(table, of, books.rehearsal()));
        if (dryRun || tried.change().isEmpty()) {
            return say(tried, Optional.empty());
        }
        return books.withNew(book -> importInto(table, of, book));
    }

    private int thermometer(String lyingAt) {
        if (sort.isPresent()) {
            throw new Misused("--as is said of a list, --place of a thermometer's file. Leave one out.");
        }
        return new LoggerImport(books, printer, file, in, logger, json.isGiven()).of(lyingAt, dryRun);
    }

    private ListSort sort() {
        return Given.read(ListSort.WORDS.parse(sort.orElseThrow(
                () -> new Misused("It is not said what each row is. Write --as varieties or --as purchases."))));
    }

    private int importInto(Table table, ListSort of, Page page) {
        ListReading reading = told(read(table, of, page));
        return say(reading, reading.change().map(page::carryOut).map(Kept::step));
    }

    private static Heard<ListReading> read(Table table, ListSort sort, Page page) {
        Journal journal = page.readAll();
        Handbook handbook = Handbook.standard();
        Outlook outlook = Outlook.of(journal, handbook, page.today());
        return ListReading.read(table, sort, new Bench(journal, outlook, handbook, Bookshelf.randomIds()));
    }

    private <T> T told(Heard<T> heard) {
        return heard.fold(meaning -> meaning, why -> {
            throw new CouldNot(given().name() + ": " + why.sentence() + " Nothing is imported.");
        });
    }

    private FileIn given() {
        return new FileIn(file, in);
    }

    private int say(ListReading reading, Optional<String> step) {
        if (json.isGiven()) {
            printer.json(ListJson.write(reading, step));
        } else {
            reading.rows().forEach(this::say);
            step.ifPresent(printer::line);
        }
        if (!reading.leftOut().isEmpty()) {
            printer.say("Left out: " + Counts.and(reading.leftOut()) + ".");
        }
        if (step.isEmpty()) {
            reading.hindrance().ifPresent(printer::say);
        }
        return reading.isRight() ? ExitCode.DONE : ExitCode.COULD_NOT;
    }

    private void say(ListedRow row) {
        row.lines()
                .forEach(line -> printer.line(
                        "row " + row.number() + ", " + row.outcome().word() + ": " + line));
    }
}
