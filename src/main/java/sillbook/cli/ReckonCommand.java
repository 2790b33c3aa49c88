// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** The commands that work a figure out without a journal. */
@Command(name = "reckon", description = "Work a figure out without a journal.")
final class ReckonCommand implements Callable<Integer> {
    private final Printer printer;

    ReckonCommand(Printer printer) {
        this.printer = printer;
    }

    @Override
    public Integer call() {
        printer.say("Which figure? 'sillbook reckon --help' names those that can be worked out.");
        return ExitCode.USED_WRONGLY;
    }
}
