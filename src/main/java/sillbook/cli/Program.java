// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** The program itself: without a command it opens the screens, which needs a terminal. */
@Command(
        name = "sillbook",
        description = "The season book for people who bring spring bulbs to flower indoors.",
        footer = {
            "",
            "Without a command the screens open, where there is a terminal.",
            "'sillbook COMMAND --help' says more of a command.",
            "",
            "Exit codes: 0 done, 1 could not be done, 2 used wrongly."
        })
final class Program implements Callable<Integer> {
    private final Printer printer;

    @Option(
            names = "--journal",
            paramLabel = "FILE",
            scope = ScopeType.INHERIT,
            description = "The journal; else SILLBOOK_JOURNAL names it, else it lies in the usual folder.")
    private Optional<String> journal = Optional.empty();

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            scope = ScopeType.INHERIT,
            description = "Say how it is used, and do nothing else.")
    @SuppressWarnings("UnusedVariable") // picocli acts on it
    private boolean help;

    @Option(names = "--version", versionHelp = true, description = "Say which version this is, and do nothing else.")
    @SuppressWarnings("UnusedVariable") // picocli acts on it
    private boolean version;

    Program(Printer printer) {
        this.printer = printer;
    }

    /** The journal named on the command line. */
    Optional<String> journal() {
        return journal;
    }

    @Override
    public Integer call() {
        Usage.LINES.forEach(printer::say);
        return ExitCode.USED_WRONGLY;
    }
}
