// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sillbook.model.Season;
import sillbook.model.SeasonPlan;
import sillbook.words.Counts;
import sillbook.words.Heard;
import sillbook.words.plan.PlanCalled;

/** A plan by its letter; which season's it is, the line says elsewhere, or of the one planned now. */
final class PlanNamed {
    static final Slot<String> LETTER = Slot.one("plan", new Letters());

    private PlanNamed() {}

    /** The plan that is meant, or why there is none. */
    static Heard<SeasonPlan> find(Filled filled, Season season, Bench bench) {
        return filled.get(LETTER)
                .map(letter -> called(letter, season, bench))
                .orElseGet(() -> Heard.not(
                        "which plan?",
                        "Which plan of season " + bench.journal().nameOf(season)
                                + "? Write the letter of one there is, as: adopt plan A."));
    }

    static Heard<SeasonPlan> called(String letter, Season season, Bench bench) {
        return new PlanCalled(bench.journal(), season, "for ").find(letter);
    }

    /** The letters of all plans there are; and after the word plan, or adopt, any that a plan could have. */
    private static final class Letters implements Sense<String> {
        private static final Set<String> LEADS = Set.of("plan", "adopt");
        private static final Sense<String> KNOWN =
                Senses.longest((words, bench) -> bench.journal().seasonPlans().all().stream()
                        .map(SeasonPlan::name)
                        .filter(words::equalsIgnoreCase)
                        .findFirst()
                        .map(Heard::as));

        @Override
        public Optional<Found<String>> at(Written line, int from, Bench bench) {
            return KNOWN.at(line, from, bench).or(() -> anyLed(line, from));
        }

        private static Optional<Found<String>> anyLed(Written line, int from) {
            boolean isLed = from > 0 && LEADS.contains(line.folded(from - 1, from));
            return Optional.of(line.text(from, from + 1))
                    .filter(word -> isLed && word.matches("[a-zA-Z]|[A-Z]{2}"))
                    .map(word -> new Found<>(from + 1, Heard.as(word), Sure.WHOLE));
        }

        @Override
        public List<Offer> offers(String beginning, Bench bench) {
            Season season = SeasonPlan.plannedOn(bench.today(), bench.journal());
            Stream<SeasonPlan> plans = SeasonPlan.of(season, bench.journal()).stream();
            return plans.map(plan -> Offer.of(plan.name(), Counts.of(plan.pots().size(), "pot"), Rank.OWN))
                    .toList();
        }
    }
}
