// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.Optional;
import java.util.stream.IntStream;
import sillbook.model.Season;
import sillbook.model.SeasonPlan;
import sillbook.words.Heard;
import sillbook.words.plan.PlanNames;

/**
 * A pot of a plan: {@code e of plan A}.
 *
 * @param number of the pot in it, from 0
 */
record PlanPotNamed(SeasonPlan plan, int number) {
    static final Slot<Typed> POT = Slot.one(
            "pot of a plan",
            Senses.matching(
                    "(\\p{L}{1,4}\\d{0,4}) (?:of|in) plan (\\p{L}{1,2})",
                    said -> Heard.as(new Typed(said.text(1), said.text(2)))));

    /** Both as they are written. */
    record Typed(String mark, String letter) {}

    static Optional<PlanPotNamed> find(Filled filled, Season season, Bench bench) {
        return filled.get(POT)
                .flatMap(typed -> SeasonPlan.called(season, typed.letter(), bench.journal())
                        .flatMap(plan -> find(typed.mark(), plan, bench)));
    }

    private static Optional<PlanPotNamed> find(String mark, SeasonPlan plan, Bench bench) {
        PlanNames names = new PlanNames(bench.journal(), plan);
        return IntStream.range(0, plan.pots().size())
                .filter(number -> names.mark(number).equalsIgnoreCase(mark))
                .mapToObj(number -> new PlanPotNamed(plan, number))
                .findFirst();
    }
}
