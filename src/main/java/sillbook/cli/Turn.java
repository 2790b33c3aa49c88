// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Mixin;
import sillbook.app.Book;
import sillbook.app.Result;
import sillbook.exchange.StepsJson;

/** A command that goes one step back or forth, and says which. */
abstract class Turn implements Callable<Integer> {
    private final Books books;
    private final Printer printer;
    private final String done;
    private final Function<Book, Result> way;

    @Mixin
    private final JsonOption json = new JsonOption();

    /** @param done what is said before the step's name */
    Turn(Books books, Printer printer, String done, Function<Book, Result> way) {
        this.books = books;
        this.printer = printer;
        this.done = done;
        this.way = way;
    }

    @Override
    public final Integer call() {
        return books.with(book -> {
            String step = Kept.step(way.apply(book));
            if (json.isGiven()) {
                printer.json(StepsJson.step(step));
            } else {
                printer.line(done + step);
            }
            return ExitCode.DONE;
        });
    }
}
