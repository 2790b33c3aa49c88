// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.stream.Stream;

/**
 * The lowest and highest temperature of a place since its thermometer was last reset.
 *
 * @param from the day of the reset
 * @param to the day it was read
 */
public record SpanReading(Id<SpanReading> id, Id<Place> place, Day from, Day to, Band between)
        implements Entity<SpanReading> {
    @Override
    public Stream<Id<?>> refersTo() {
        return Stream.of(place);
    }
}
