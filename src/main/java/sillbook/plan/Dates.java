// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** Days, compared and counted. */
final class Dates {
    private Dates() {}

    static int between(LocalDate from, LocalDate to) {
        return (int) ChronoUnit.DAYS.between(from, to);
    }

    static LocalDate earlier(LocalDate one, LocalDate other) {
        return other.isBefore(one) ? other : one;
    }

    static LocalDate later(LocalDate one, LocalDate other) {
        return other.isAfter(one) ? other : one;
    }
}
