// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.Map;
import java.util.Optional;
import sillbook.model.Day;
import sillbook.model.Id;
import sillbook.model.Variety;

/**
 * The points of a pot's bloom: of the pot, from the first flower of the first variety to the last of the last, and of
 * each variety that has its own.
 */
public record Bloom(Points pot, Map<Id<Variety>, Points> varieties) {

    static final Bloom NONE = new Bloom(Points.NONE, Map.of());

    public Bloom {
        varieties = Map.copyOf(varieties);
    }

    /** The points reached so far, in order. */
    public record Points(Optional<Day> firstFlower, Optional<Day> fullBloom, Optional<Day> pastBloom) {
        static final Points NONE = new Points(Optional.empty(), Optional.empty(), Optional.empty());
    }
}
