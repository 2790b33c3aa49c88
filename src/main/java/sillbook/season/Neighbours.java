// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Outcome;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Pot.Planting;
import sillbook.model.Purchase;
import sillbook.model.Stage;
import sillbook.model.Variety;

/** What a pot's next job depends on beside the pot: places and their room, purchases, outcomes. */
final class Neighbours {
    private final Journal journal;
    private final Destinations destinations;
    private final Map<Id<Pot>, Set<Optional<Id<Variety>>>> outcomes = new HashMap<>();

    Neighbours(Journal journal, Destinations destinations) {
        this.journal = journal;
        this.destinations = destinations;
        for (Outcome outcome : journal.outcomes().all()) {
            outcomes.computeIfAbsent(outcome.pot(), pot -> new HashSet<>()).add(outcome.variety());
        }
    }

    Optional<Destination> suggest(Pot pot, Stage stage, Optional<Id<Place>> from) {
        return destinations.suggest(pot, stage, from);
    }

    Optional<Destination> colderThan(Id<Place> here) {
        return destinations.colderThan(here);
    }

    boolean serves(Id<Place> place, Stage stage) {
        return journal.places()
                .find(place)
                .filter(there -> there.serves() == stage)
                .isPresent();
    }

    /** Whether an outcome is written for the pot, or for each variety in it. */
    boolean hasOutcome(Pot pot) {
        Collection<Optional<Id<Variety>>> written = outcomes.getOrDefault(pot.id(), Set.of());
        return written.contains(Optional.<Id<Variety>>empty())
                || pot.plantings().stream()
                        .map(Planting::variety)
                        .map(Optional::of)
                        .allMatch(written::contains);
    }

    /** Whether all its bulbs have come, as far as the journal tells. */
    boolean areBulbsInHand(Pot pot) {
        return pot.plantings().stream()
                .flatMap(planting -> planting.purchase().stream())
                .flatMap(purchase -> journal.purchases().find(purchase).stream())
                .allMatch(purchase -> purchase.state() == Purchase.State.IN_HAND);
    }
}
