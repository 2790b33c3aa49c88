// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.function.Consumer;
import sillbook.model.ChartColumn;
import sillbook.model.DayRead;
import sillbook.model.Id;
import sillbook.model.Place;

/**
 * How the readings of a place come to sums. A store keeps those of days beside the readings, and has them worked out anew where readings, or
 * what they are worked out on, changed.
 */
public interface DaySums {
    /**
     * What the sums of a place are worked out on.
     *
     * @param zone whose midnight begins a day
     * @param bridges the longest time between two readings that is no gap
     * @param correction added to what its thermometers read, in thousandths of a degree
     */
    record Basis(ZoneId zone, Duration bridges, int correction) {}

    /** Goes through readings. */
    interface Tally {
        /**
         * The next reading, later than the one before.
         *
         * @param at seconds since 1970-01-01T00:00Z
         * @param milli thousandths of a degree, as it was read
         */
        void read(long at, int milli);

        /** There are no more. */
        void end();
    }

    /** Sums of days; each is given when it is over, if anything is known of it. */
    Tally days(Id<Place> place, Basis basis, Consumer<DayRead> taking);

    /** Columns of equal length over a stretch of time; each is given when it is over, if anything is known of it. */
    Tally columns(Basis basis, Instant from, Instant toExclusive, int columns, Consumer<ChartColumn> taking);
}
