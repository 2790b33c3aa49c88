// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sillbook.app.Book;
import sillbook.exchange.PottingJson;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Pot;
import sillbook.words.CautionWords;
import sillbook.words.Complaint;
import sillbook.words.Kinds;
import sillbook.words.PottingSteps;
import sillbook.words.SourceWords;
import sillbook.words.Terms;

/** Says the steps at the bench. */
@Command(
        name = "potting",
        description = "Say how a kind, or a pot that is to be made, is potted: the steps at the bench.")
final class PottingCommand extends View {
    @Parameters(paramLabel = "WHAT", description = "A label, or a kind: 'tulip triumph'.")
    private String what = "";

    @Option(names = "--way", paramLabel = "WAY", description = "Drained, bowl, glass or pebbles; drained if not said.")
    private Optional<String> way = Optional.empty();

    PottingCommand(Books books, Printer printer) {
        super(books, printer);
    }

    @Override
    Sight look(Book book) {
        Journal journal = book.readAll();
        Optional<Pot> pot = journal.pot(journal.seasonOf(book.today()), what);
        Kind kind = pot.map(
                        one -> journal.varieties().get(one.first().variety()).kind())
                .orElseGet(() -> kind(journal));
        Pot.Way grown = way.map(PottingCommand::way).or(() -> pot.map(Pot::way)).orElse(Pot.Way.DRAINED);
        PottingSteps steps = new PottingSteps(Handbook.standard(), kind, grown);
        CautionWords cautions = new CautionWords(Handbook.standard(), journal.settings());
        return new Sight(
                () -> PottingJson.write(steps, cautions.of(kind)),
                () -> lines(journal, steps, cautions),
                List.of(),
                "");
    }

    private Kind kind(Journal journal) {
        return new Kinds(journal, Handbook.standard()).parse(what).fold(kind -> kind, (Complaint why) -> {
            throw new CouldNot("There is no pot '" + what + "' this season. " + why.sentence());
        });
    }

    private static Pot.Way way(String word) {
        return Terms.WAYS.parse(word).fold(found -> found, (Complaint why) -> {
            throw new Misused(why.sentence());
        });
    }

    private static List<String> lines(Journal journal, PottingSteps steps, CautionWords cautions) {
        SourceWords sources = new SourceWords(Handbook.standard(), journal.settings());
        List<String> lines = new ArrayList<>();
        if (!steps.way().isOverWater()) {
            cautions.beforePotting().ifPresent(lines::add);
        }
        lines.add(cautions.brief(steps.kind()));
        steps.steps().forEach(step -> lines.add(step.says() + " (" + sources.names(step.sources()) + ")"));
        steps.perPot()
                .forEach(count ->
                        lines.add("in a pot of 15 cm: " + count.says() + " (" + sources.names(count.sources()) + ")"));
        return lines;
    }
}
