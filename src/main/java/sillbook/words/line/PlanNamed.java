// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Season;
import sillbook.model.SeasonPlan;
import sillbook.words.Counts;
import sillbook.words.Heard;

/** A plan by its letter; which season's it is, the line says elsewhere, or the coming one's. */
final class PlanNamed {
    static final Slot<String> LETTER = Slot.one("plan", new Letters());

    private PlanNamed() {}

    static Optional<SeasonPlan> find(Filled filled, Season season, Bench bench) {
        return filled.get(LETTER).flatMap(letter -> SeasonPlan.called(season, letter, bench.journal()));
    }

    /** The letters of all plans there are. */
    private static final class Letters implements Sense<String> {
        private static final Sense<String> KNOWN =
                Senses.longest((words, bench) -> bench.journal().seasonPlans().all().stream()
                        .map(SeasonPlan::name)
                        .filter(words::equalsIgnoreCase)
                        .findFirst()
                        .map(Heard::as));

        @Override
        public Optional<Found<String>> at(Written line, int from, Bench bench) {
            return KNOWN.at(line, from, bench);
        }

        @Override
        public List<Offer> offers(String beginning, Bench bench) {
            Season season = bench.journal().chosenFor(bench.today());
            Stream<SeasonPlan> plans = SeasonPlan.of(season, bench.journal()).stream();
            return plans.map(plan -> Offer.of(plan.name(), Counts.of(plan.pots().size(), "pot"), Rank.OWN))
                    .toList();
        }
    }
}
