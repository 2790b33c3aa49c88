// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Outcome;
import sillbook.model.Pot;
import sillbook.model.Season;
import sillbook.model.Variety;

/** Reads the record of every variety. An outcome of a whole pot speaks for each variety in it. */
final class VarietyReading {
    private final Journal journal;
    private final Season season;
    private final Map<Id<Variety>, SortedMap<Season, List<Integer>>> scores = new HashMap<>();

    VarietyReading(Journal journal, Season season) {
        this.journal = journal;
        this.season = season;
        journal.outcomes().all().stream().sorted(byLabel()).forEach(this::count);
    }

    private Comparator<Outcome> byLabel() {
        return Comparator.comparing(outcome -> journal.pots().get(outcome.pot()), ByLabel.OF_POTS);
    }

    private void count(Outcome outcome) {
        Pot pot = journal.pots().get(outcome.pot());
        outcome.score()
                .ifPresent(score -> outcome.variety()
                        .map(List::of)
                        .orElseGet(() -> inIt(pot))
                        .forEach(variety -> count(variety, pot.season(), score)));
    }

    private static List<Id<Variety>> inIt(Pot pot) {
        return pot.plantings().stream()
                .map(planting -> planting.variety())
                .distinct()
                .toList();
    }

    private void count(Id<Variety> variety, Season winter, int score) {
        scores.computeIfAbsent(variety, none -> new TreeMap<>())
                .computeIfAbsent(winter, none -> new ArrayList<>())
                .add(score);
    }

    VarietyNow now(Variety variety) {
        List<VarietyNow.Winter> winters = new ArrayList<>();
        scores.getOrDefault(variety.id(), new TreeMap<>())
                .forEach((winter, given) -> winters.add(new VarietyNow.Winter(winter, given)));
        return new VarietyNow(variety, Stock.of(variety.id(), season, journal).inHand(), winters);
    }
}
