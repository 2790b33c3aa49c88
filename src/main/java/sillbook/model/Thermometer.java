// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * The thermometer of a place. A place has one, and what it reads wrong holds for all that is read there.
 *
 * @param lies where in the place it lies, in the grower's words; may be empty
 * @param ice what it read in ice water, which is at 0 C
 */
public record Thermometer(Id<Thermometer> id, Id<Place> place, String lies, Optional<IceTest> ice)
        implements Entity<Thermometer> {

    /** What a thermometer read in ice water, and the day it was tried. */
    public record IceTest(Temperature read, Day on) {}

    /** Added to what it reads, in thousandths of a degree; 0 while it was never tried. */
    public int correctionMilli() {
        return ice.map(test -> -test.read().milli()).orElse(0);
    }

    @Override
    public Stream<Id<?>> refersTo() {
        return Stream.of(place);
    }
}
