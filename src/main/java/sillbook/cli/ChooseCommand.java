// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.List;
import picocli.CommandLine.Command;
import sillbook.app.Book;
import sillbook.exchange.ChoosingJson;
import sillbook.model.Journal;
import sillbook.season.past.Choosing;
import sillbook.words.ChoosingWords;

/** Says what there is to choose from for the next season. */
@Command(
        name = "choose",
        description = {
            "Say what there is to choose from for the next season, and what speaks for each: the chosen first, what is set aside last.",
            "Marks are written: sillbook write 'choose Lantern Row x10'."
        })
final class ChooseCommand extends View {
    ChooseCommand(Books books, Printer printer) {
        super(books, printer);
    }

    @Override
    Sight look(Book book) {
        Journal journal = book.readAll();
        Choosing choosing = Choosing.of(journal, outlook(book));
        return new Sight(
                () -> ChoosingJson.write(journal, choosing),
                () -> new ChoosingWords(journal).lines(choosing),
                List.of(),
                "No variety yet. Write one: sillbook write 'variety Marrow Lane, tulip triumph'");
    }
}
