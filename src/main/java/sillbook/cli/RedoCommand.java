// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import picocli.CommandLine.Command;
import sillbook.app.Book;

/** Puts back the step taken back last. */
@Command(name = "redo", description = "Put back the step taken back last, and say which it was.")
final class RedoCommand extends Turn {
    RedoCommand(Books books, Printer printer) {
        super(books, printer, "put back: ", Book::putBack);
    }
}
