// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import sillbook.app.Book;

/** Copies the journal to a file of its own. */
@Command(
        name = "backup",
        description = "Write a checked copy of the journal. A file that is there already is left as it is.")
final class BackupCommand implements Callable<Integer> {
    private static final String STANDARD_OUTPUT = "-";

    private final Books books;
    private final Printer printer;
    private final OutputStream out;

    @Parameters(paramLabel = "FILE", description = "Where the copy goes; - is the standard output.")
    private String file = "";

    BackupCommand(Books books, Printer printer, OutputStream out) {
        this.books = books;
        this.printer = printer;
        this.out = out;
    }

    @Override
    public Integer call() {
        return books.with(book -> file.equals(STANDARD_OUTPUT) ? stream(book) : write(book, Path.of(file)));
    }

    private int write(Book book, Path copy) {
        book.backUp(copy);
        printer.say("The copy is " + copy + ".");
        return ExitCode.DONE;
    }

    /** By way of a file, because only a whole copy can be checked. */
    private int stream(Book book) {
        try {
            Path folder = Files.createTempDirectory("sillbook");
            Path copy = folder.resolve("copy.sillbook");
            try {
                book.backUp(copy);
                Files.copy(copy, out);
            } finally {
                Files.deleteIfExists(copy);
                Files.delete(folder);
            }
            return ExitCode.DONE;
        } catch (IOException failure) {
            printer.say("The copy could not be written: " + failure.getMessage() + ".");
            return ExitCode.COULD_NOT;
        }
    }
}
