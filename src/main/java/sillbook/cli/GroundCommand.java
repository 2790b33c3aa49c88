// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import sillbook.app.Book;
import sillbook.exchange.GroundJson;
import sillbook.model.Journal;
import sillbook.model.Trench;
import sillbook.season.GroundForetold;
import sillbook.season.Outlook;
import sillbook.words.GroundAheadWords;
import sillbook.words.GroundWords;
import sillbook.words.Provisos;

/** Foretells how cold it gets this winter where pots stand buried. */
@Command(
        name = "ground",
        description = "Foretell when to dig a trench, how cold it gets at its pots, and whether it freezes.")
final class GroundCommand extends View {
    GroundCommand(Books books, Printer printer) {
        super(books, printer);
    }

    @Override
    Sight look(Book book) {
        Journal journal = book.readAll();
        Outlook outlook = outlook(book);
        List<Trench> trenches = List.copyOf(journal.trenches().all());
        Provisos provisos = Provisos.ofGround(journal, trenches);
        return new Sight(
                () -> GroundJson.write(journal, trenches, trench -> outlook.ground(trench.place()), provisos),
                () -> trenches.stream()
                        .flatMap(trench -> lines(journal, trench, outlook.ground(trench.place())).stream())
                        .toList(),
                provisos.warnings(),
                "No ground yet. Write one: sillbook write 'ground trench, 25 cm deep, means -2 -1 3 8 13 17 19 18 14 9 3 -1'");
    }

    private static List<String> lines(Journal journal, Trench trench, Optional<GroundForetold> ground) {
        List<String> lines = new ArrayList<>();
        lines.add(journal.places().get(trench.place()).name() + ": " + new GroundWords(journal).say(trench));
        ground.map(new GroundAheadWords(journal.settings())::say)
                .orElse(List.of(GroundAheadWords.NOT_YET))
                .forEach(line -> lines.add("  " + line));
        return lines;
    }
}
