// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import sillbook.app.Book;
import sillbook.exchange.RoundJson;
import sillbook.exchange.RoundList;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.words.CautionWords;
import sillbook.words.Provisos;
import sillbook.words.line.PlaceCalled;

/** Prints what is to be looked at in one place. */
@Command(
        name = "round",
        description = {
            "Print a list of the pots of a place, with boxes to tick there.",
            "What was ticked is written back as one line, which stands at its foot."
        })
final class RoundCommand extends View {
    @Parameters(paramLabel = "PLACE", description = "Its name, or how that begins: cellar.")
    private String place = "";

    RoundCommand(Books books, Printer printer) {
        super(books, printer);
    }

    @Override
    Sight look(Book book) {
        Journal journal = book.readAll();
        Place called = CouldNot.unless(PlaceCalled.find(journal, place));
        RoundList list = RoundList.of(journal, outlook(book), called);
        List<String> cautions = new CautionWords(Handbook.standard(), journal.settings()).of(called);
        return new Sight(
                () -> RoundJson.write(list, cautions, Provisos.NONE),
                () -> new RoundText(list, cautions).lines(),
                List.of(),
                "Nothing stands or waits in the " + called.name() + ".");
    }
}
