// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.DayOfWeek;
import java.util.Collection;
import java.util.Optional;

/** Days of the week, as the days on which something is done. */
public final class DaysOfWeek {
    private DaysOfWeek() {}

    /** {@code sat}, {@code saturday}, {@code saturdays}, in small letters. */
    public static Optional<DayOfWeek> find(String word) {
        return Calendar.dayOfWeek(word)
                .or(() -> word.endsWith("days")
                        ? Calendar.dayOfWeek(word.substring(0, word.length() - 1))
                        : Optional.empty());
    }

    /** {@code Sat and Sun}; {@code any day} of none. */
    public static String say(Collection<DayOfWeek> days) {
        return days.isEmpty()
                ? "any day"
                : Counts.and(days.stream().sorted().map(Calendar::shortName).toList());
    }
}
