// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.io.InputStream;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sillbook.app.Page;
import sillbook.exchange.StepsJson;

/** Writes lines into the journal, each one step. */
@Command(
        name = "write",
        description = {
            "Write a line into the journal, as on the screens with L; - reads lines from the standard input.",
            "Each line is one step, which undo takes back. The first that cannot be kept ends it; those before it stay."
                    + " Where there is no journal yet, one is begun."
        })
final class WriteCommand implements Callable<Integer> {
    private static final String STANDARD_INPUT = "-";

    private final Books books;
    private final Printer printer;
    private final InputStream in;

    @Parameters(paramLabel = "LINE", description = "For example: 'T1-T6 cool room'")
    private String line = "";

    @Option(names = "--dry-run", description = "Only say what the line means and what follows; keep nothing.")
    private boolean dryRun;

    @Mixin
    private final JsonOption json = new JsonOption();

    WriteCommand(Books books, Printer printer, InputStream in) {
        this.books = books;
        this.printer = printer;
        this.in = in;
    }

    @Override
    public Integer call() {
        List<String> lines = line.equals(STANDARD_INPUT) ? LinesIn.read(in) : List.of(line);
        if (dryRun) {
            return write(books.rehearsal(), lines);
        }
        if (!books.areThere()) {
            new Scribe(books.rehearsal()).write(lines.get(0));
        }
        return books.withNew(book -> write(book, lines));
    }

    private int write(Page page, List<String> lines) {
        Scribe scribe = new Scribe(page);
        try {
            for (int at = 0; at < lines.size(); at++) {
                say(write(scribe, lines, at), scribe);
            }
        } finally {
            if (json.isGiven() && !scribe.done().isEmpty()) {
                printer.json(StepsJson.lines(scribe.done(), !dryRun, scribe.provisos()));
            }
        }
        return ExitCode.DONE;
    }

    /** Of several lines, says which cannot be kept, and what became of those before it. */
    private StepsJson.Line write(Scribe scribe, List<String> lines, int at) {
        try {
            return scribe.write(lines.get(at));
        } catch (CouldNot refused) {
            throw lines.size() == 1
                    ? refused
                    : new CouldNot("Line " + (at + 1) + ", '" + lines.get(at) + "': " + refused.sentence() + kept(at));
        }
    }

    private String kept(int before) {
        if (before == 0 || dryRun) {
            return "";
        }
        return before == 1 ? " The line before it is kept." : " The " + before + " lines before it are kept.";
    }

    private void say(StepsJson.Line written, Scribe scribe) {
        if (json.isGiven()) {
            return;
        }
        if (dryRun) {
            written.reading().means().forEach(meaning -> printer.line(meaning.says()));
            printer.lines(written.reading().then());
        } else {
            printer.line(written.step());
            scribe.sticks().forEach(stick -> printer.line("stick: " + stick.line()));
        }
        written.reading().remarks().forEach(printer::warn);
    }
}
