// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

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

    /** The pot that is meant, or why there is none. */
    static Heard<PlanPotNamed> find(Filled filled, Season season, Bench bench) {
        return filled.get(POT)
                .map(typed -> PlanNamed.called(typed.letter(), season, bench)
                        .then(plan -> find(typed.mark(), plan, new PlanNames(bench.journal(), plan))))
                .orElseGet(() -> Heard.not(
                        "which pot?",
                        "Which pot of which plan of season " + bench.journal().nameOf(season)
                                + "? Write both, as: nudge e of plan A 3 days later."));
    }

    private static Heard<PlanPotNamed> find(String mark, SeasonPlan plan, PlanNames names) {
        return IntStream.range(0, plan.pots().size())
                .filter(number -> names.mark(number).equalsIgnoreCase(mark))
                .mapToObj(number -> Heard.as(new PlanPotNamed(plan, number)))
                .findFirst()
                .orElseGet(() -> Heard.not(
                        "no such pot", "Plan " + plan.name() + " has no pot " + mark + ". " + there(plan, names)));
    }

    private static String there(SeasonPlan plan, PlanNames names) {
        int pots = plan.pots().size();
        return switch (pots) {
            case 0 -> "It has none at all.";
            case 1 -> "It has one, " + names.mark(0) + ".";
            default -> "Its first is " + names.mark(0) + ", its last " + names.mark(pots - 1) + ".";
        };
    }
}
