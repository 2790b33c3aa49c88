// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sillbook.model.Id;
import sillbook.model.Place;

/** Which growing pots stand where. */
final class Standings {
    private final Map<Id<Place>, List<PotLife>> byPlace = new HashMap<>();

    Standings(Collection<PotLife> lives) {
        lives.stream()
                .filter(PotLife::isGrowing)
                .sorted(ByLabel.OF_LIVES)
                .forEach(life -> life.stands()
                        .ifPresent(stay -> byPlace.computeIfAbsent(stay.place(), place -> new ArrayList<>())
                                .add(life)));
    }

    /** Those at a place, by label. */
    List<PotLife> at(Id<Place> place) {
        return List.copyOf(byPlace.getOrDefault(place, List.of()));
    }

    int count(Id<Place> place) {
        return at(place).size();
    }
}
