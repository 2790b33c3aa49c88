// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sillbook.app.Book;
import sillbook.exchange.PlacesJson;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.season.Outlook;
import sillbook.season.PlaceNow;
import sillbook.words.Counts;
import sillbook.words.PotNames;
import sillbook.words.Terms;

/** Says what stands where. */
@Command(name = "places", description = "Say what stands where, and how full each place is.")
final class PlacesCommand implements Callable<Integer> {
    private final Books books;
    private final Printer printer;

    @Option(names = "--json", description = "As JSON.")
    private boolean json;

    PlacesCommand(Books books, Printer printer) {
        this.books = books;
        this.printer = printer;
    }

    @Override
    public Integer call() {
        return books.with(this::say);
    }

    private int say(Book book) {
        Journal journal = book.readAll();
        List<PlaceNow> places =
                Outlook.of(journal, Handbook.standard(), book.today()).places();
        if (json) {
            printer.json(PlacesJson.write(journal, places));
        } else {
            places.forEach(place -> printer.line(line(journal, place)));
            if (places.isEmpty()) {
                printer.say("No place yet. Write one: sillbook write 'place cellar, cellar, room 20'");
            }
        }
        return ExitCode.DONE;
    }

    private static String line(Journal journal, PlaceNow now) {
        String room = now.place().room().map(most -> " of " + most).orElse("");
        String standing = now.pots().isEmpty() ? "" : ": " + new PotNames(journal).labels(now.pots());
        return now.place().name() + ", " + Terms.STAGES.say(now.place().serves()) + ", "
                + (room.isEmpty()
                        ? Counts.of(now.pots().size(), "pot")
                        : now.pots().size() + room + " pots") + standing;
    }
}
