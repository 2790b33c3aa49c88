// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sillbook.change.Hand;
import sillbook.handbook.Handbook;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Ids;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Season;
import sillbook.model.Stage;
import sillbook.words.DayReader;
import sillbook.words.Kinds;
import sillbook.words.Looking;

/**
 * What a line is read against.
 *
 * @param today the journal's day
 * @param ids for what the line would make
 */
public record Bench(Journal journal, LocalDate today, Handbook handbook, Ids ids) {
    Season season() {
        return journal.seasonOf(today);
    }

    DayReader days(Looking looking) {
        return new DayReader(today, looking);
    }

    /** A hand to try a change with, at the start of today. */
    Hand hand() {
        Instant now = today.atStartOfDay(journal.settings().zone()).toInstant();
        return new Hand(now, today, ids);
    }

    Kinds kinds() {
        return new Kinds(journal, handbook);
    }

    Room room(Place place) {
        List<Id<Pot>> there = journal.pots().all().stream()
                .map(Pot::id)
                .filter(pot -> stands(pot).equals(Optional.of(place.id())))
                .toList();
        return new Room(there, place.room());
    }

    /** A place that serves a stage: of those with room for all the pots the first, else the one with most room. */
    Optional<Place> suggest(List<Pot> pots, Stage stage) {
        return journal.places().all().stream()
                .filter(place -> place.serves() == stage)
                .max(Comparator.comparingInt(
                        place -> Math.min(pots.size(), room(place).left())));
    }

    /** Where a pot stands; empty when nobody said, or it is done. */
    Optional<Id<Place>> stands(Id<Pot> pot) {
        Optional<Id<Place>> stands = Optional.empty();
        for (Event event : journal.history(pot)) {
            if (event.what() instanceof Happening.Moved moved) {
                stands = Optional.of(moved.place());
            }
            if (event.what() instanceof Happening.Closed) {
                stands = Optional.empty();
            }
        }
        return stands;
    }
}
