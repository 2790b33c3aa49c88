// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.exchange.PlanJson;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.model.SeasonPlan;
import sillbook.plan.PlanNow;
import sillbook.plan.PlanReading;
import sillbook.plan.Planning;
import sillbook.plan.SuppliesReading;
import sillbook.words.CautionWords;
import sillbook.words.Provisos;
import sillbook.words.plan.PlanAssumed;
import sillbook.words.plan.PlanLines;
import sillbook.words.plan.PlanSum;

/**
 * A plan as it is shown, beside the others of its season.
 *
 * @param planning of the journal as it is
 * @param asked the plan; where the journal has it, as it is there
 */
record PlanSight(Planning planning, SeasonPlan asked) {

    Sight sight() {
        Journal journal = planning.journal();
        LocalDate today = planning.today();
        Optional<SeasonPlan> kept = journal.seasonPlans().find(asked.id());
        PlanSum shown = sum(kept.orElse(asked));
        PlanNow now = shown.now();
        List<PlanSum> all = beside(shown, kept.isPresent());
        Provisos provisos = new Provisos(List.of(), PlanAssumed.of(planning, now));
        List<String> cautions = new CautionWords(Handbook.standard(), journal.settings()).general();
        return new Sight(
                () -> PlanJson.write(journal, today, now, kept.isPresent(), all, cautions, provisos),
                () -> lines(
                        new PlanLines(journal, today, now, kept.isPresent()).lines(shown.supplies()), all, cautions),
                List.of(),
                "");
    }

    private PlanSum sum(SeasonPlan plan) {
        return new PlanSum(PlanReading.of(planning, plan), SuppliesReading.of(planning.journal(), plan));
    }

    /** The plans that are kept, and last the one shown where it is not. */
    private List<PlanSum> beside(PlanSum shown, boolean isKept) {
        SeasonPlan itself = shown.now().plan();
        Stream<PlanSum> kept = SeasonPlan.of(planning.season(), planning.journal()).stream()
                .map(plan -> plan.id().equals(itself.id()) ? shown : sum(plan));
        return Stream.concat(kept, isKept ? Stream.of() : Stream.of(shown)).toList();
    }

    private static List<String> lines(List<String> plan, List<PlanSum> all, List<String> cautions) {
        return Stream.of(plan, all.stream().map(PlanSum::line).toList(), CareLines.of(cautions))
                .flatMap(List::stream)
                .toList();
    }
}
