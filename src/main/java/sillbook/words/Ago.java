// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** How long since, short enough for a column. */
public final class Ago {
    private static final long HOURS_ARE_SAID_UP_TO = 48;

    private Ago() {}

    /** {@code just now}, {@code 20 min ago}, {@code 2 h ago}, {@code 9 d ago}; rounded down, and never ahead of now. */
    public static String say(Instant then, Instant now) {
        Duration since = Duration.between(then, now);
        if (since.toMinutes() < 1) {
            return "just now";
        }
        if (since.toHours() < 1) {
            return since.toMinutes() + " min ago";
        }
        return since.toHours() < HOURS_ARE_SAID_UP_TO ? since.toHours() + " h ago" : since.toDays() + " d ago";
    }

    /** {@code today}, {@code 1 d ago}, where only the day is known. */
    public static String say(LocalDate then, LocalDate today) {
        long days = ChronoUnit.DAYS.between(then, today);
        return days <= 0 ? "today" : days + " d ago";
    }
}
