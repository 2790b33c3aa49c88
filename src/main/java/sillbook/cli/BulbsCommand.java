// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sillbook.app.Book;
import sillbook.exchange.BulbsJson;
import sillbook.model.Journal;
import sillbook.model.Purchase;
import sillbook.season.Outlook;
import sillbook.season.Suiting.Standing;
import sillbook.season.VarietyNow;

/** Says which varieties the book has, and what was bought. */
@Command(
        name = "bulbs",
        description = {
            "Say which varieties the book has, how they did, and what was bought, the newest first.",
            "With --suits pots: those that suit pots, the best first and tall ones last, each with what says so."
        })
final class BulbsCommand extends View {
    /** Of these there is nothing to choose. */
    private static final Set<Standing> LEFT_OUT = Set.of(Standing.NO_WORD, Standing.UNSUITED);

    @Option(names = "--suits", paramLabel = "WHAT", description = "Only varieties that suit it: pots.")
    private Optional<String> suits = Optional.empty();

    BulbsCommand(Books books, Printer printer) {
        super(books, printer);
    }

    @Override
    Sight look(Book book) {
        suits.filter(what -> !what.equals("pots")).ifPresent(what -> {
            throw new Misused("'" + what + "' is nothing that varieties are sorted by. Write pots.");
        });
        Journal journal = book.readAll();
        Outlook outlook = outlook(book);
        List<VarietyNow> varieties = suits.isPresent() ? forPots(outlook) : outlook.varieties();
        List<Purchase> purchases = journal.purchases().all().stream()
                .filter(purchase -> suits.isEmpty())
                .sorted((one, other) -> other.day().compareTo(one.day()))
                .toList();
        BulbText text = new BulbText(journal, outlook);
        return new Sight(
                () -> BulbsJson.write(journal, outlook, varieties, purchases),
                () -> Stream.concat(
                                varieties.stream().map(suits.isPresent() ? text::forPots : text::line),
                                purchases.stream().map(text::line))
                        .toList(),
                List.of(),
                outlook.varieties().isEmpty()
                        ? "No variety yet. Write one: sillbook write 'variety Marrow Lane, tulip triumph'"
                        : "Of no variety here it is known that it suits pots.");
    }

    private static List<VarietyNow> forPots(Outlook outlook) {
        return outlook.varieties().stream()
                .filter(now -> !LEFT_OUT.contains(standing(now, outlook)))
                .sorted(Comparator.comparing(now -> standing(now, outlook)))
                .toList();
    }

    private static Standing standing(VarietyNow now, Outlook outlook) {
        return outlook.suiting(now.variety()).standing();
    }
}
