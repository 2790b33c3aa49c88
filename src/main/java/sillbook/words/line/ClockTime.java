// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.time.DateTimeException;
import java.time.LocalTime;
import java.util.Optional;
import java.util.regex.Pattern;
import sillbook.words.Groups;
import sillbook.words.Heard;

/** A time of day: {@code 14:30}, {@code at 7:05}, {@code 7 pm}. */
final class ClockTime {
    static final Sense<LocalTime> SENSE = ClockTime::at;

    private static final int MOST_WORDS = 5;
    private static final Pattern FORM = Pattern.compile("(?:at )?(\\d{1,2})(?: : (\\d{2}))? ?(am|pm)?");

    private ClockTime() {}

    /** The colon is a mark of the line, and so a word of its own. */
    private static Optional<Found<LocalTime>> at(Written line, int from, Bench bench) {
        for (int end = Math.min(line.size(), from + MOST_WORDS); end > from; end--) {
            Optional<Heard<LocalTime>> read = Groups.of(FORM, line.folded(from, end))
                    .filter(said -> said.has(2) || said.has(3))
                    .map(ClockTime::time);
            if (read.isPresent()) {
                return Optional.of(new Found<>(end, read.get(), Sure.WHOLE));
            }
        }
        return Optional.empty();
    }

    private static Heard<LocalTime> time(Groups said) {
        int hour = said.number(1);
        int minute = said.has(2) ? said.number(2) : 0;
        try {
            return Heard.as(LocalTime.of(said.has(3) ? ofHalfDay(hour, said.text(3)) : hour, minute));
        } catch (DateTimeException wrong) {
            return Heard.not("no time of day", "There is no such time of day. Write it as 14:30 or 2:30 pm.");
        }
    }

    private static int ofHalfDay(int hour, String half) {
        if (hour < 1 || hour > 12) {
            throw new DateTimeException("half a day has 12 hours, not " + hour);
        }
        return hour % 12 + (half.equals("pm") ? 12 : 0);
    }
}
