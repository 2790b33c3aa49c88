// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sillbook.app.Book;
import sillbook.exchange.Demo;
import sillbook.handbook.Handbook;
import sillbook.season.Outlook;
import sillbook.words.Days;

/** Without a terminal the demo says its Today and is gone. */
@Command(
        name = "demo",
        description = "Open a spare copy of an invented winter; without a terminal, say what its day asks for.")
final class DemoCommand implements Callable<Integer> {
    private final World world;
    private final Printer printer;

    @Option(names = "--json", description = "As JSON.")
    private boolean json;

    DemoCommand(World world, Printer printer) {
        this.world = world;
        this.printer = printer;
    }

    @Override
    public Integer call() {
        try (Book book = world.demoShelf().get().spare(Demo.journal())) {
            printer.say(
                    "The demo: an invented winter, seen on " + Days.full(book.today()) + ". Nothing of it is kept.");
            TodayCommand.print(
                    book,
                    Outlook.of(book.readAll(), Handbook.standard(), book.today())
                            .today(),
                    json,
                    printer);
        }
        return ExitCode.DONE;
    }
}
