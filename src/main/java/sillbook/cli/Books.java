// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;
import sillbook.app.Book;
import sillbook.app.Bookshelf;
import sillbook.app.Rehearsal;

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
        try {
            return world.folders().journal(named.get(), world.environment());
        } catch (InvalidPathException wrong) {
            throw new Misused("'" + wrong.getInput() + "' cannot be the name of a file. Name another with --journal.");
        }
    }

    /** Opens the journal, does something with it, and closes it. */
    int with(ToIntFunction<Book> work) {
        try (Book book = shelf().open(file())) {
            return work.applyAsInt(book);
        }
    }

    /** The same, but begins a journal where there is none. */
    int withNew(ToIntFunction<Book> work) {
        if (areThere()) {
            return with(work);
        }
        try (Book book = shelf().begin(file())) {
            printer.say("Began a journal, " + file() + ".");
            return work.applyAsInt(book);
        }
    }

    boolean areThere() {
        return shelf().has(file());
    }

    /** The journal to try changes on; nothing of it is kept. */
    Rehearsal rehearsal() {
        return shelf().rehearse(file());
    }

    private Bookshelf shelf() {
        return world.shelf().get();
    }
}
