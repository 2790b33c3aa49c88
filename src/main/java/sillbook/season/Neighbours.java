// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Outcome;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Proposal.Course;
import sillbook.model.Purchase;
import sillbook.model.Season;
import sillbook.model.Stage;

/** What a pot's next job depends on beside the pot: places and their room, purchases, outcomes. */
final class Neighbours {
    private final Journal journal;
    private final Destinations destinations;
    private final Map<Id<Pot>, List<Outcome>> outcomes;

    Neighbours(Journal journal, Destinations destinations) {
        this.journal = journal;
        this.destinations = destinations;
        this.outcomes = journal.outcomes().all().stream().collect(Collectors.groupingBy(Outcome::pot));
    }

    Optional<Destination> suggest(Pot pot, Stage stage, Optional<Id<Place>> from) {
        return destinations.suggest(pot, stage, from);
    }

    /** Where a plan would have a pot stand, as long as there is room. */
    Optional<Destination> meant(Course course, Stage stage, Optional<Id<Place>> from) {
        return (stage == Stage.COLD ? course.cold() : course.room())
                .filter(place -> from.filter(place::equals).isEmpty() && serves(place, stage))
                .flatMap(destinations::withRoom);
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

    /** What is written of how a pot did in its present winter. */
    List<Outcome> outcomes(PotLife life) {
        return life.years().present(outcomes.getOrDefault(life.pot().id(), List.of()));
    }

    Season seasonOf(LocalDate day) {
        return journal.seasonOf(day);
    }

    LocalDate firstDay(Season season) {
        return season.firstDay(journal.settings().seasonStart());
    }

    /** Whether all its bulbs have come, as far as the journal tells. */
    boolean areBulbsInHand(Pot pot) {
        return pot.plantings().stream()
                .flatMap(planting -> planting.purchase().stream())
                .flatMap(purchase -> journal.purchases().find(purchase).stream())
                .allMatch(purchase -> purchase.state() == Purchase.State.IN_HAND);
    }
}
