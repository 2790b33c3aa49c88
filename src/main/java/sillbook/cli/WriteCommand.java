// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sillbook.app.Book;
import sillbook.app.Bookshelf;
import sillbook.change.Change;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.season.Outlook;
import sillbook.words.Complaint;
import sillbook.words.line.Bench;
import sillbook.words.line.LineReading;
import sillbook.words.line.QuickLine;

/** Writes lines into the journal, each one step. */
@Command(
        name = "write",
        description = {
            "Write a line into the journal, as in the screens with L; '-' reads lines from standard input.",
            "Each line is one step, which undo takes back. Where there is no journal yet, one is begun."
        })
final class WriteCommand implements Callable<Integer> {
    private final Books books;
    private final Printer printer;
    private final InputStream in;

    @Parameters(paramLabel = "LINE", description = "For example: 'T1-T6 cool room'")
    private String line = "";

    @Option(names = "--dry-run", description = "Only say what the line means; keep nothing.")
    private boolean dryRun;

    WriteCommand(Books books, Printer printer, InputStream in) {
        this.books = books;
        this.printer = printer;
        this.in = in;
    }

    @Override
    public Integer call() {
        List<String> lines = line.equals("-") ? lines() : List.of(line);
        return dryRun ? books.with(book -> writeAll(book, lines)) : books.withNew(book -> writeAll(book, lines));
    }

    private List<String> lines() {
        BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
        try (reader) {
            return reader.lines().filter(each -> !each.isBlank()).toList();
        } catch (IOException failure) {
            throw new UncheckedIOException("standard input could not be read", failure);
        }
    }

    /** Stops at the first line that cannot be; those before it are kept. */
    private int writeAll(Book book, List<String> lines) {
        for (String each : lines) {
            int code = write(book, each);
            if (code != ExitCode.DONE) {
                return code;
            }
        }
        return ExitCode.DONE;
    }

    private int write(Book book, String each) {
        Journal journal = book.readAll();
        Handbook handbook = Handbook.standard();
        Outlook outlook = Outlook.of(journal, handbook, book.today());
        LineReading reading = QuickLine.read(each, new Bench(journal, outlook, handbook, Bookshelf.randomIds()));
        if (reading.change().isEmpty()) {
            printer.say(reading.complaint()
                    .map(Complaint::sentence)
                    .orElse("The line is empty: there is nothing to write."));
            printer.say("Nothing of '" + each + "' was kept.");
            return ExitCode.COULD_NOT;
        }
        if (dryRun) {
            return explain(reading);
        }
        return keep(book, reading.change().get());
    }

    private int keep(Book book, Change change) {
        return Kept.say(book.carryOut(change), "", printer);
    }

    private int explain(LineReading reading) {
        reading.means().forEach(meaning -> printer.line(meaning.says()));
        reading.then().forEach(printer::line);
        reading.remarks().forEach(printer::say);
        return ExitCode.DONE;
    }
}
