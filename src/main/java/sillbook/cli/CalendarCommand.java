// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sillbook.app.Book;
import sillbook.exchange.CalendarFile;
import sillbook.exchange.ComingJobs;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.season.Outlook;
import sillbook.words.Counts;

/** Tells the coming jobs to calendars. */
@Command(
        name = "calendar",
        description = {
            "Write the coming jobs as an iCalendar file: all-day events with an alarm at nine.",
            "Written again to the same file, what is the same stays, what changed is revised, and what went away is"
                    + " cancelled, so that a calendar that reads it has nothing twice."
        })
final class CalendarCommand implements Callable<Integer> {
    private static final String STANDARD_OUTPUT = "-";

    private final Books books;
    private final Printer printer;

    @Option(
            names = "--to",
            paramLabel = "FILE",
            description = "The calendar's file, best with .ics at its end; without it, the standard output.")
    private String file = STANDARD_OUTPUT;

    CalendarCommand(Books books, Printer printer) {
        this.books = books;
        this.printer = printer;
    }

    @Override
    public Integer call() {
        return books.with(book -> file.equals(STANDARD_OUTPUT) ? print(book) : write(book, path()));
    }

    private Path path() {
        try {
            return Path.of(file);
        } catch (InvalidPathException wrong) {
            throw new Misused("'" + file + "' cannot be the name of a file. Name another with --to.");
        }
    }

    private int print(Book book) {
        printer.document(brought(CalendarFile.empty(), book).text());
        return ExitCode.DONE;
    }

    private static CalendarFile brought(CalendarFile before, Book book) {
        Journal journal = book.readAll();
        Outlook outlook = Outlook.of(journal, Handbook.standard(), book.today());
        return before.with(ComingJobs.of(journal, outlook), book.now(), book.today());
    }

    private int write(Book book, Path path) {
        try {
            CalendarFile calendar = brought(before(path), book);
            put(calendar.text(), path);
            printer.say("The calendar is " + path + ", " + Counts.of(calendar.jobs(), "job") + ".");
            return ExitCode.DONE;
        } catch (IOException failure) {
            throw new CouldNot("The calendar could not be written to " + path + ": " + failure.getMessage() + ".");
        }
    }

    private static CalendarFile before(Path path) throws IOException {
        if (!Files.exists(path)) {
            return CalendarFile.empty();
        }
        Optional<CalendarFile> known = CalendarFile.parse(new String(Files.readAllBytes(path), UTF_8));
        return known.orElseThrow(() -> new CouldNot("There is a file " + path
                + " already that is no calendar of Sillbook, and it is left as it is. Name another."));
    }

    /** By way of a file beside it, so that whoever reads it never finds half of it. */
    private static void put(String text, Path path) throws IOException {
        Path folder = Optional.ofNullable(path.toAbsolutePath().getParent()).orElse(path);
        Path beside = Files.createTempFile(folder, ".calendar", ".part");
        try {
            Files.writeString(beside, text, UTF_8);
            Files.move(beside, path, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(beside);
        }
    }
}
