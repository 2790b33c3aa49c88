// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sillbook.app.Book;
import sillbook.exchange.LabelSheet;
import sillbook.exchange.LabelsJson;
import sillbook.handbook.Handbook;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.Season;
import sillbook.model.Stage;
import sillbook.season.Job;
import sillbook.season.Outlook;
import sillbook.season.PotNow;
import sillbook.season.Today;
import sillbook.words.CautionWords;
import sillbook.words.Sticks;

/** Prints labels to cut out. */
@Command(
        name = "labels",
        description = {
            "Print labels to cut out, two abreast, with what to beware of beneath them.",
            "Without a LABEL all pots of the season that are not done are meant."
        })
final class LabelsCommand extends View {
    @Parameters(paramLabel = "LABEL", arity = "0..*", description = "Pots or runs of pots: T4 T9-T14.")
    private List<String> labels = List.of();

    @Option(names = "--due", description = "Only pots that Today asks something of.")
    private boolean due;

    @Mixin
    private final SeasonOption season = new SeasonOption();

    LabelsCommand(Books books, Printer printer) {
        super(books, printer);
    }

    @Override
    Sight look(Book book) {
        Journal journal = book.readAll();
        Outlook outlook = outlook(book);
        List<Id<Pot>> pots = pots(journal, outlook);
        Sticks sticks = new Sticks(journal, outlook);
        List<String> cautions = new CautionWords(Handbook.standard(), journal.settings()).ofLabels(journal, pots);
        return new Sight(
                () -> LabelsJson.write(journal, sticks.single(pots), cautions),
                () -> new LabelSheet(sticks.single(pots), cautions).lines(),
                List.of(),
                "There is no pot to label.");
    }

    private List<Id<Pot>> pots(Journal journal, Outlook outlook) {
        Season of = season.orElse(journal.seasonOf(outlook.day()));
        List<PotNow> there = outlook.pots(of);
        if (!labels.isEmpty()) {
            List<Pot> known = there.stream().map(now -> now.life().pot()).toList();
            return new LabelledPots(known, journal.nameOf(of)).find(labels);
        }
        List<Id<Pot>> asked = due ? asked(outlook.today()) : List.of();
        return there.stream()
                .filter(now -> season.given().isPresent() || now.life().stage() != Stage.DONE)
                .map(now -> now.life().pot().id())
                .filter(pot -> !due || asked.contains(pot))
                .toList();
    }

    private static List<Id<Pot>> asked(Today today) {
        return Stream.of(today.late(), today.ready(), today.due())
                .flatMap(List::stream)
                .map(Job.OfPots::pots)
                .flatMap(List::stream)
                .toList();
    }
}
