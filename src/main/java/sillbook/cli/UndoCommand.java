// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import picocli.CommandLine.Command;
import sillbook.app.Book;

/** Takes back the last step. */
@Command(name = "undo", description = "Take back the last step, and say which it was.")
final class UndoCommand extends Turn {
    UndoCommand(Books books, Printer printer) {
        super(books, printer, "taken back: ", Book::takeBack);
    }
}
