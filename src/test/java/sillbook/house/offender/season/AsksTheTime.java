// SPDX-License-Identifier: Apache-2.0
package sillbook.house.offender.season;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

final class AsksTheTime {
    private AsksTheTime() {}

    static Instant now() {
        return Instant.now();
    }

    static LocalDate today() {
        return LocalDate.now(ZoneId.systemDefault());
    }

    static Instant ownClock() {
        return Clock.systemUTC().instant();
    }

    static long millis() {
        return System.currentTimeMillis();
    }
}
