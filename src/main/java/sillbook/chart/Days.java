// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** Days in a row; may be none. */
public record Days(LocalDate fromInclusive, LocalDate toExclusive) {
    public Days {
        if (toExclusive.isBefore(fromInclusive)) {
            throw new IllegalArgumentException(
                    "days end at " + toExclusive + ", before they begin at " + fromInclusive);
        }
    }

    public static Days of(LocalDate fromInclusive, long count) {
        return new Days(fromInclusive, fromInclusive.plusDays(count));
    }

    public boolean contains(LocalDate day) {
        return !day.isBefore(fromInclusive) && day.isBefore(toExclusive);
    }

    public boolean overlaps(Days other) {
        return fromInclusive.isBefore(other.toExclusive)
                && other.fromInclusive.isBefore(toExclusive)
                && !isEmpty()
                && !other.isEmpty();
    }

    public long count() {
        return ChronoUnit.DAYS.between(fromInclusive, toExclusive);
    }

    public boolean isEmpty() {
        return count() == 0;
    }
}
