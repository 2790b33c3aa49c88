// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import java.time.Instant;
import java.time.LocalDate;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.words.logger.Counted;
import sillbook.words.logger.Counted.Span;
import sillbook.words.logger.Counted.Strange;

/** Counts what the lines of a file come to. */
final class Tally {
    /** Lines that stand out are named so far, and counted beyond. */
    private static final int MOST_STRANGE = 200;

    private static final int LONGEST_TEXT = 80;

    private final DayMeans days;
    private final List<Strange> strange = new ArrayList<>();
    private long readings;
    private long withoutValue;
    private long others;
    private long suspicious;
    private long ahead;
    private long unreadable;
    private long first = Long.MAX_VALUE;
    private long last = Long.MIN_VALUE;

    /** For days of this zone. */
    Tally(ZoneRules rules) {
        days = new DayMeans(rules);
    }

    void noValue() {
        withoutValue++;
    }

    void other() {
        others++;
    }

    void unreadable(Lines line) {
        unreadable++;
        note(line, Optional.empty());
    }

    void reading(long at) {
        readings++;
        first = Math.min(first, at);
        last = Math.max(last, at);
    }

    void sound(long at, int milli) {
        days.add(at, milli);
    }

    void suspicious(Lines line, int milli) {
        suspicious++;
        note(line, Optional.of(milli));
    }

    void ahead() {
        ahead++;
    }

    private void note(Lines line, Optional<Integer> milli) {
        if (strange.size() < MOST_STRANGE) {
            String text = Encoding.text(line.copy()).strip();
            strange.add(new Strange(line.number(), text.substring(0, Math.min(text.length(), LONGEST_TEXT)), milli));
        }
    }

    Counted counted(List<LocalDate> twice) {
        Optional<Span> span = readings == 0
                ? Optional.empty()
                : Optional.of(new Span(Instant.ofEpochSecond(first), Instant.ofEpochSecond(last)));
        return new Counted(
                readings, withoutValue, others, suspicious, ahead, unreadable, strange, span, days.means(), twice);
    }
}
