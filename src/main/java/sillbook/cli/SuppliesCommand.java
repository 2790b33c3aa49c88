// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import sillbook.app.Book;
import sillbook.exchange.SuppliesJson;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.model.SeasonPlan;
import sillbook.plan.PlanReading;
import sillbook.plan.Planning;
import sillbook.plan.Supplies;
import sillbook.plan.SuppliesReading;
import sillbook.words.CautionWords;
import sillbook.words.Provisos;
import sillbook.words.plan.PlanAssumed;
import sillbook.words.plan.SuppliesLines;

/** Says what a plan takes and what is to be had. */
@Command(
        name = "supplies",
        description = {
            "Say what a plan takes and what is still to be had: bulbs by supplier, with the days by which they are to be"
                    + " ordered and potted, the tightest first; containers, potting mix, labels; and what is left over.",
            "Without --plan it is the plan that is adopted, else the last that is kept, else what a hand rule gives."
        })
final class SuppliesCommand extends View {
    @Option(names = "--plan", paramLabel = "NAME", description = "The letter of a plan: A.")
    private Optional<String> name = Optional.empty();

    @Mixin
    private final PlanAsked asked = new PlanAsked();

    SuppliesCommand(Books books, Printer printer) {
        super(books, printer);
    }

    @Override
    Sight look(Book book) {
        Planning planning = asked.planning(book);
        Journal journal = planning.journal();
        SeasonPlan plan = PlanAsked.find(planning, name);
        Supplies supplies = SuppliesReading.of(journal, plan);
        Provisos provisos = new Provisos(List.of(), PlanAssumed.of(planning, PlanReading.of(planning, plan)));
        List<String> cautions = new CautionWords(Handbook.standard(), journal.settings()).general();
        return new Sight(
                () -> SuppliesJson.write(journal, plan, supplies, cautions, provisos),
                () -> lines(new SuppliesLines(journal).lines(supplies), cautions),
                List.of(),
                "Nothing is planned, so nothing is to be had. Choose bulbs or write down what you bought first.");
    }

    private static List<String> lines(List<String> supplies, List<String> cautions) {
        return supplies.isEmpty()
                ? supplies
                : Stream.concat(supplies.stream(), CareLines.of(cautions).stream())
                        .toList();
    }
}
