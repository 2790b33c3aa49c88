// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Puts back the step taken back last. */
@Command(name = "redo", description = "Put back the step taken back last, and say which it was.")
final class RedoCommand implements Callable<Integer> {
    private final Books books;
    private final Printer printer;

    RedoCommand(Books books, Printer printer) {
        this.books = books;
        this.printer = printer;
    }

    @Override
    public Integer call() {
        return books.with(book -> Kept.say(book.putBack(), "put back: ", printer));
    }
}
