// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Place;

/** How many pots stand at each place, and so how many more find room. */
final class Occupancy {
    private final Map<Id<Place>, Integer> pots = new HashMap<>();

    /** Of pots as they stand. */
    static Occupancy of(Collection<PotLife> lives) {
        Occupancy occupancy = new Occupancy();
        lives.forEach(life -> life.stands().map(Stay::place).ifPresent(occupancy::comes));
        return occupancy;
    }

    void comes(Id<Place> place) {
        pots.merge(place, 1, Integer::sum);
    }

    void leaves(Id<Place> place) {
        pots.merge(place, -1, Integer::sum);
    }

    /** Empty when nobody wrote its room; below 0 when there are too many. */
    Optional<Integer> left(Place place) {
        return place.room().map(room -> room - pots.getOrDefault(place.id(), 0));
    }

    boolean isFull(Place place) {
        return left(place).filter(more -> more <= 0).isPresent();
    }
}
