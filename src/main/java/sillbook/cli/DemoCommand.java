// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import sillbook.app.demo.Demo;
import sillbook.words.Days;

/** Without a terminal the demo says its Today; with one, the screens are opened before the commands are read. */
@Command(
        name = "demo",
        description = "Open a spare copy of an invented winter; without a terminal, say what its day asks for.")
final class DemoCommand implements Callable<Integer> {
    private final Printer printer;

    @Mixin
    private final JsonOption json = new JsonOption();

    DemoCommand(Printer printer) {
        this.printer = printer;
    }

    @Override
    public Integer call() {
        printer.say("The demo: an invented winter, seen on " + Days.full(Demo.DAY) + ". Nothing of it is kept.");
        TodayCommand.sight(Demo.journal(), Demo.DAY).show(json, printer);
        return ExitCode.DONE;
    }
}
