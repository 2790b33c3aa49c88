// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** Days, compared and counted. */
public final class Dates {
    private Dates() {}

    public static int between(LocalDate from, LocalDate to) {
        return (int) ChronoUnit.DAYS.between(from, to);
    }

    public static LocalDate earlier(LocalDate one, LocalDate other) {
        return other.isBefore(one) ? other : one;
    }

    public static LocalDate later(LocalDate one, LocalDate other) {
        return other.isAfter(one) ? other : one;
    }
}
