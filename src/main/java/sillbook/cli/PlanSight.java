// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import sillbook.exchange.PlanJson;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.model.SeasonPlan;
import sillbook.plan.PlanNow;
import sillbook.plan.PlanReading;
import sillbook.plan.Planning;
import sillbook.plan.Supplies;
import sillbook.plan.SuppliesReading;
import sillbook.words.CautionWords;
import sillbook.words.Provisos;
import sillbook.words.plan.PlanAssumed;
import sillbook.words.plan.PlanLines;
import sillbook.words.plan.PlanSum;

/**
 * A plan as it is shown, beside the others of its season.
 *
 * @param asked the plan; where the journal has it, as it is there
 */
record PlanSight(Journal journal, LocalDate today, Planning planning, SeasonPlan asked) {

    Sight sight() {
        boolean isKept = journal.seasonPlans().find(asked.id()).isPresent();
        SeasonPlan plan = journal.seasonPlans().find(asked.id()).orElse(asked);
        PlanNow now = PlanReading.of(planning, plan);
        List<PlanSum> all = sums(isKept ? List.of() : List.of(plan));
        Provisos provisos = new Provisos(List.of(), PlanAssumed.of(planning, now));
        List<String> cautions = new CautionWords(Handbook.standard(), journal.settings()).general();
        return new Sight(
                () -> PlanJson.write(journal, today, now, isKept, all, cautions, provisos),
                () -> lines(new PlanLines(journal, today, now, isKept).lines(supplies(plan)), all, cautions),
                List.of(),
                "");
    }

    private List<PlanSum> sums(List<SeasonPlan> beside) {
        return Stream.concat(SeasonPlan.of(planning.season(), journal).stream(), beside.stream())
                .map(plan -> new PlanSum(PlanReading.of(planning, plan), supplies(plan)))
                .toList();
    }

    private Supplies supplies(SeasonPlan plan) {
        return SuppliesReading.of(journal, plan);
    }

    private static List<String> lines(List<String> plan, List<PlanSum> all, List<String> cautions) {
        List<String> lines = new ArrayList<>(plan);
        all.stream().map(PlanSum::line).forEach(lines::add);
        cautions.forEach(caution -> lines.add("care: " + caution));
        return lines;
    }
}
