// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.List;
import picocli.CommandLine.Command;
import sillbook.app.Book;
import sillbook.exchange.PlacesJson;
import sillbook.model.Journal;
import sillbook.season.Outlook;
import sillbook.season.PlaceNow;
import sillbook.words.Provisos;

/** Says what stands where. */
@Command(name = "places", description = "Say what stands where, and how full each place is and will be.")
final class PlacesCommand extends View {
    PlacesCommand(Books books, Printer printer) {
        super(books, printer);
    }

    @Override
    Sight look(Book book) {
        Journal journal = book.readAll();
        Outlook outlook = outlook(book);
        List<PlaceNow> places = outlook.places();
        Provisos provisos = Provisos.ofPlaces(journal, outlook.today().places());
        PlaceText text = new PlaceText(journal);
        return new Sight(
                () -> PlacesJson.write(journal, places, provisos),
                () -> places.stream().map(text::line).toList(),
                provisos.warnings(),
                "No place yet. Write one: sillbook write 'place cellar, cellar, room 20'");
    }
}
