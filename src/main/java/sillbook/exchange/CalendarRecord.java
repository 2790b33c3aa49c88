// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.time.Instant;
import java.time.LocalDate;

/**
 * An entry as it stands in a calendar's file.
 *
 * @param sequence how often it was revised since it was first written
 * @param revisedAt the moment it came to be as it is, to the second
 * @param isCancelled whether its job went away
 */
record CalendarRecord(CalendarEntry entry, int sequence, Instant revisedAt, boolean isCancelled) {
    /** After so many days beyond its own a job that went away is forgotten. */
    private static final int REMEMBERED_DAYS = 60;

    static CalendarRecord first(CalendarEntry entry, Instant now) {
        return new CalendarRecord(entry, 0, now, false);
    }

    /** The same, or where the job is another by now its next revision. */
    CalendarRecord revised(CalendarEntry by, Instant now) {
        return entry.equals(by) && !isCancelled ? this : new CalendarRecord(by, sequence + 1, now, false);
    }

    /** The job is not asked for any more. */
    CalendarRecord cancelled(Instant now) {
        return isCancelled ? this : new CalendarRecord(entry, sequence + 1, now, true);
    }

    LocalDate day() {
        return entry.day();
    }

    boolean isForgotten(LocalDate today) {
        return isCancelled && day().plusDays(REMEMBERED_DAYS).isBefore(today);
    }
}
