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
    private final Map<Id<Place>, Integer> standing = new HashMap<>();
    private final Map<String, Map<Id<Place>, Integer>> uses = new HashMap<>();

    /** Knows the room left by these pots. */
    Destinations(Journal journal, Collection<PotLife> lives, LocalDate today) {
        this.journal = journal;
        this.today = today;
        for (PotLife life : lives) {
            life.stands().ifPresent(stay -> standing.merge(stay.place(), 1, Integer::sum));
        }
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
        Map<Id<Place>, Integer> used = uses.getOrDefault(kind(pot), Map.of());
        Optional<Place> best = Optional.empty();
        for (Place place : journal.places().all()) {
            boolean better =
                    best.map(other -> used(used, place) > used(used, other)).orElse(true);
            if (better && serves(place, stage) && isFree(place, from)) {
                best = Optional.of(place);
            }
        }
        return best.map(this::destination);
    }

    private static int used(Map<Id<Place>, Integer> used, Place place) {
        return used.getOrDefault(place.id(), 0);
    }

    private boolean serves(Place place, Stage stage) {
        return place.serves() == stage
                && (stage != Stage.COLD || place.coldDays().contains(today));
    }

    private boolean isFree(Place place, Optional<Id<Place>> from) {
        return from.filter(place.id()::equals).isEmpty()
                && left(place).filter(pots -> pots <= 0).isEmpty();
    }

    private Optional<Integer> left(Place place) {
        return place.room().map(room -> room - standing.getOrDefault(place.id(), 0));
    }

    private Destination destination(Place place) {
        return new Destination(place.id(), left(place));
    }

    /** The coldest place with room that is known to be colder than this one. */
    Optional<Destination> colderThan(Id<Place> here) {
        Optional<Temperature> warmest = journal.places().find(here).flatMap(Destinations::warmest);
        return warmest.flatMap(limit -> coldest(place -> serves(place, Stage.COLD)
                        && isFree(place, Optional.of(here))
                        && warmest(place)
                                .filter(there -> there.milli() < limit.milli())
                                .isPresent()))
                .map(this::destination);
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
