// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import sillbook.app.Book;
import sillbook.exchange.BulbsJson;
import sillbook.model.Journal;
import sillbook.model.Purchase;
import sillbook.season.VarietyNow;

/** Says which varieties the book has, and what was bought. */
@Command(
        name = "bulbs",
        description = "Say which varieties the book has, how they did, and what was bought, the newest first.")
final class BulbsCommand extends View {
    BulbsCommand(Books books, Printer printer) {
        super(books, printer);
    }

    @Override
    Sight look(Book book) {
        Journal journal = book.readAll();
        List<VarietyNow> varieties = outlook(book).varieties();
        List<Purchase> purchases = journal.purchases().all().stream()
                .sorted((one, other) -> other.day().compareTo(one.day()))
                .toList();
        BulbText text = new BulbText(journal);
        return new Sight(
                () -> BulbsJson.write(journal, varieties, purchases),
                () -> Stream.concat(
                                varieties.stream().map(text::line),
                                purchases.stream().map(text::line))
                        .toList(),
                List.of(),
                "No variety yet. Write one: sillbook write 'variety Marrow Lane, tulip triumph'");
    }
}
