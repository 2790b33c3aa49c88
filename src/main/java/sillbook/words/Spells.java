// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.Duration;

/** Lengths of time as they are said. */
public final class Spells {
    private static final long TWO_DAYS = Duration.ofDays(2).toHours();

    private Spells() {}

    /** {@code 10 days}, {@code half a day}, {@code 36 hours}: days where it is whole ones. */
    public static String say(Duration time) {
        long hours = time.toHours();
        if (hours == 12) {
            return "half a day";
        }
        boolean inDays = hours > 0 && hours % 24 == 0;
        return inDays ? Counts.of(hours / 24, "day") : Counts.of(hours, "hour");
    }

    /** {@code 3 days}, {@code 5 hours}, {@code 20 minutes}: in the unit that is large enough to be said at once, rounded down. */
    public static String roughly(Duration time) {
        if (time.toHours() >= TWO_DAYS) {
            return Counts.of(time.toDays(), "day");
        }
        return time.toHours() >= 1 ? Counts.of(time.toHours(), "hour") : Counts.of(time.toMinutes(), "minute");
    }
}
