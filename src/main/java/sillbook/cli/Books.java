// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;
import sillbook.app.Book;
import sillbook.app.Bookshelf;

/** The journal a command works on. */
final class Books {
    private final World world;
    private final Printer printer;
    private final Supplier<Optional<String>> named;

    /** For the journal that is named on the command line, when it has been read. */
    Books(World world, Printer printer, Supplier<Optional<String>> named) {
        this.world = world;
        this.printer = printer;
        this.named = named;
    }

    private Path file() {
        return world.folders().journal(named.get(), world.environment());
    }

    /** Opens the journal, does something with it, and closes it. */
    int with(ToIntFunction<Book> work) {
        try (Book book = world.shelf().get().open(file())) {
            return work.applyAsInt(book);
        }
    }

    /** The same, but begins a journal where there is none. */
    int withNew(ToIntFunction<Book> work) {
        Bookshelf shelf = world.shelf().get();
        if (shelf.has(file())) {
            return with(work);
        }
        try (Book book = shelf.begin(file())) {
            printer.say("Began a journal, " + file() + ".");
            return work.applyAsInt(book);
        }
    }
}
