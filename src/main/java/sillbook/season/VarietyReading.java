// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Outcome;
import sillbook.model.Pot;
import sillbook.model.Season;
import sillbook.model.Stock;
import sillbook.model.Variety;

/** Reads the record of every variety. A score of a whole pot speaks for each variety in it that has none of its own. */
final class VarietyReading {
    private final Journal journal;
    private final Season season;
    private final Map<Id<Variety>, SortedMap<Season, List<Integer>>> scores = new HashMap<>();

    VarietyReading(Journal journal, Season season) {
        this.journal = journal;
        this.season = season;
        List<Outcome> scored = journal.outcomes().all().stream()
                .filter(outcome -> outcome.score().isPresent())
                .sorted(byLabel())
                .toList();
        Set<List<Id<?>>> own = scored.stream()
                .flatMap(outcome -> outcome.variety().stream().map(one -> List.<Id<?>>of(outcome.pot(), one)))
                .collect(Collectors.toSet());
        scored.forEach(outcome -> count(outcome, own));
    }

    private Comparator<Outcome> byLabel() {
        return Comparator.comparing(outcome -> journal.pots().get(outcome.pot()), ByLabel.OF_POTS);
    }

    private void count(Outcome outcome, Set<List<Id<?>>> own) {
        Pot pot = journal.pots().get(outcome.pot());
        List<Id<Variety>> spokenFor = outcome.variety()
                .map(List::of)
                .orElseGet(() -> inIt(pot).stream()
                        .filter(variety -> !own.contains(List.<Id<?>>of(pot.id(), variety)))
                        .toList());
        outcome.score().ifPresent(score -> spokenFor.forEach(variety -> count(variety, winter(pot, outcome), score)));
    }

    /** The winter it speaks of: the pot's own, or of a plant that lives on the one it had come to. */
    private Season winter(Pot pot, Outcome outcome) {
        LocalDate day = outcome.day().likely();
        return pot.season().isBefore(journal.seasonOf(day))
                ? History.read(journal, pot, day)
                        .years()
                        .woken()
                        .map(woken -> journal.seasonOf(woken.likely()))
                        .orElse(pot.season())
                : pot.season();
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
