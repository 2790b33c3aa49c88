// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

import java.util.List;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Place;

/**
 * Readings to be taken in for a place.
 *
 * @param name what their source is called
 * @param original its bytes
 * @param feed what was read from them; it is gone through once
 * @param beside what is written down with them, as the same step
 */
public record Delivery(Id<Place> place, String name, Original original, Feed feed, List<Edit> beside) {
    public Delivery {
        beside = List.copyOf(beside);
    }

    /** Readings alone. */
    public Delivery(Id<Place> place, String name, Original original, Feed feed) {
        this(place, name, original, feed, List.of());
    }
}
