// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.Optional;
import sillbook.model.Day;

/** A day remembered by the part of its month only. */
enum Rough {
    EARLY("early", 1, 5, 10),
    MID("mid", 11, 15, 20),
    LATE("late", 21, 26, 31),
    IN("in", 1, 15, 31);

    private final String word;
    private final int first;
    private final int likely;
    private final int last;

    Rough(String word, int first, int likely, int last) {
        this.word = word;
        this.first = first;
        this.likely = likely;
        this.last = last;
    }

    String word() {
        return word;
    }

    Day of(YearMonth month) {
        LocalDate end = month.atDay(Math.min(last, month.lengthOfMonth()));
        return new Day(month.atDay(first), month.atDay(likely), end);
    }

    /** In a month, of a year as it was written or of the nearest that fits. */
    Heard<Day> in(Month month, String year, DayReader reader) {
        YearMonth nearest = DateSought.month(month, reader);
        return year.isEmpty()
                ? Heard.as(of(nearest))
                : new DateSought(1, month, reader).in(year).map(first -> of(YearMonth.from(first.likely())));
    }

    /** The part of a month that an uncertain day was remembered by; empty when it was not. */
    static Optional<Rough> of(Day day) {
        YearMonth month = YearMonth.from(day.likely());
        return Arrays.stream(values())
                .filter(rough -> rough.of(month).equals(day))
                .findFirst();
    }

    /** As people say it, in small letters: {@code end of} is {@code late}. */
    static Optional<Rough> parse(String words) {
        return switch (words) {
            case "early", "beginning of", "start of", "early in" -> Optional.of(EARLY);
            case "mid", "middle of" -> Optional.of(MID);
            case "late", "end of", "late in" -> Optional.of(LATE);
            case "in", "some time in" -> Optional.of(IN);
            default -> Optional.empty();
        };
    }
}
