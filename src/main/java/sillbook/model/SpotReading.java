// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.time.Instant;
import java.util.stream.Stream;

/** A temperature of a place at an instant, read and written down by hand; as the thermometer gave it. */
public record SpotReading(Id<SpotReading> id, Id<Place> place, Instant at, Temperature temperature)
        implements Entity<SpotReading> {
    @Override
    public Stream<Id<?>> refersTo() {
        return Stream.of(place);
    }
}
