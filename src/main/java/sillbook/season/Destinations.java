// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import sillbook.model.Event;
import sillbook.model.Happening.Moved;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.model.Temperature;

/** Suggests where pots could go: where there is room, and where this grower's pots of the kind have mostly gone. */
final class Destinations {
    private final Journal journal;
    private final LocalDate today;
    private final Occupancy now;
    private final Map<String, Map<Id<Place>, Integer>> uses = new HashMap<>();

    /** Knows the room left by these pots. */
    Destinations(Journal journal, Collection<PotLife> lives, LocalDate today) {
        this.journal = journal;
        this.today = today;
        this.now = Occupancy.of(lives);
        journal.pots().all().forEach(this::count);
    }

    private void count(Pot pot) {
        Map<Id<Place>, Integer> ofKind = uses.computeIfAbsent(kind(pot), kind -> new HashMap<>());
        for (Event event : journal.history(pot.id())) {
            if (event.what() instanceof Moved moved) {
                ofKind.merge(moved.place(), 1, Integer::sum);
            }
        }
    }

    private String kind(Pot pot) {
        return journal.varieties().get(pot.first().variety()).kind().name();
    }

    /** A place with room that serves the stage, the most used by this kind, else the first; empty when there is none. */
    Optional<Destination> suggest(Pot pot, Stage stage, Optional<Id<Place>> from) {
        return suggest(pot, stage, from, now, today);
    }

    /** The same on another day, with the places filled otherwise. */
    Optional<Destination> suggest(Pot pot, Stage stage, Optional<Id<Place>> from, Occupancy occupancy, LocalDate day) {
        Map<Id<Place>, Integer> used = uses.getOrDefault(kind(pot), Map.of());
        Optional<Place> best = Optional.empty();
        for (Place place : journal.places().all()) {
            boolean better =
                    best.map(other -> used(used, place) > used(used, other)).orElse(true);
            boolean isElsewhere = from.filter(place.id()::equals).isEmpty();
            if (better && isElsewhere && serves(place, stage, day) && !occupancy.isFull(place)) {
                best = Optional.of(place);
            }
        }
        return best.map(place -> new Destination(place.id(), occupancy.left(place)));
    }

    private static int used(Map<Id<Place>, Integer> used, Place place) {
        return used.getOrDefault(place.id(), 0);
    }

    private static boolean serves(Place place, Stage stage, LocalDate day) {
        return place.serves() == stage
                && (stage != Stage.COLD || place.coldDays().contains(day));
    }

    /** A place, while it is not full. */
    Optional<Destination> withRoom(Id<Place> place) {
        return journal.places()
                .find(place)
                .filter(there -> !now.isFull(there))
                .map(there -> new Destination(place, now.left(there)));
    }

    /** Whether there is any place for a stage, full or not. */
    boolean isServed(Stage stage) {
        return journal.places().all().stream().anyMatch(place -> place.serves() == stage);
    }

    /** The coldest place with room that is known to be colder than this one. */
    Optional<Destination> colderThan(Id<Place> here) {
        Optional<Temperature> warmest = journal.places().find(here).flatMap(Destinations::warmest);
        return warmest.flatMap(limit -> coldest(place -> serves(place, Stage.COLD, today)
                        && !place.id().equals(here)
                        && !now.isFull(place)
                        && warmest(place)
                                .filter(there -> there.milli() < limit.milli())
                                .isPresent()))
                .map(place -> new Destination(place.id(), now.left(place)));
    }

    private Optional<Place> coldest(Predicate<Place> fits) {
        return journal.places().all().stream()
                .filter(fits)
                .min((one, other) -> Integer.compare(
                        warmest(one).map(Temperature::milli).orElse(Integer.MAX_VALUE),
                        warmest(other).map(Temperature::milli).orElse(Integer.MAX_VALUE)));
    }

    private static Optional<Temperature> warmest(Place place) {
        return place.usual().map(band -> band.high());
    }
}
