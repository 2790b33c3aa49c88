// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.List;
import picocli.CommandLine.Command;
import sillbook.app.Book;
import sillbook.exchange.PlacesJson;
import sillbook.model.Journal;
import sillbook.season.Outlook;
import sillbook.season.PlaceClimate;
import sillbook.season.PlaceNow;
import sillbook.words.Provisos;

/** Says what stands where, and how warm it is there. */
@Command(
        name = "places",
        description =
                "Say what stands where, how full each place is and will be, and how warm its thermometer says it is and was.")
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
        PlaceText text = new PlaceText(journal, book.now());
        return new Sight(
                () -> PlacesJson.write(journal, outlook, provisos),
                () -> places.stream()
                        .flatMap(now -> text.lines(
                                now, PlaceClimate.of(journal, now.place().id(), outlook.day())))
                        .toList(),
                provisos.warnings(),
                "No place yet. Write one: sillbook write 'place cellar, cellar, room 20'");
    }
}
