// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import sillbook.app.Book;
import sillbook.exchange.StepsJson;

/** Examines the journal. */
@Command(
        name = "verify",
        description = "Examine the file and what it says; a line for each thing that is wrong, and then exit code 1.")
final class VerifyCommand implements Callable<Integer> {
    private final Books books;
    private final Printer printer;

    @Mixin
    private final JsonOption json = new JsonOption();

    VerifyCommand(Books books, Printer printer) {
        this.books = books;
        this.printer = printer;
    }

    @Override
    public Integer call() {
        return books.with(this::verify);
    }

    private int verify(Book book) {
        List<String> findings = book.verify();
        new Sight(() -> StepsJson.findings(findings), () -> findings, List.of(), "All is well.").show(json, printer);
        return findings.isEmpty() ? ExitCode.DONE : ExitCode.COULD_NOT;
    }
}
