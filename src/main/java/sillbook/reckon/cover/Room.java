// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.OptionalInt;

/**
 * How much stands in a place at once, in units of a pot's {@link PotGroup#takes()}.
 *
 * @param most empty where there is room for everything
 */
public record Room(OptionalInt most) {
    private static final int LARGEST = 1_000_000;

    /** A place that is never full. */
    public static final Room ENDLESS = new Room(OptionalInt.empty());

    public Room {
        most.ifPresent(units -> Limits.within("room", units, 0, LARGEST));
    }

    public static Room of(int most) {
        return new Room(OptionalInt.of(most));
    }
}
