// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Takes back the last step. */
@Command(name = "undo", description = "Take back the last step, and say which it was.")
final class UndoCommand implements Callable<Integer> {
    private final Books books;
    private final Printer printer;

    UndoCommand(Books books, Printer printer) {
        this.books = books;
        this.printer = printer;
    }

    @Override
    public Integer call() {
        return books.with(book -> Kept.say(book.takeBack(), "taken back: ", printer));
    }
}
