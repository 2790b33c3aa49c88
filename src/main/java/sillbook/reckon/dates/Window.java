// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * The day on which something begins: the earliest and the latest that the published lengths add up to, and the usual
 * one. A range, not a probability.
 */
public record Window(LocalDate earliest, LocalDate likely, LocalDate latest) {
    public Window {
        if (earliest.isAfter(likely) || likely.isAfter(latest)) {
            throw new IllegalArgumentException("not in order: " + earliest + ", " + likely + ", " + latest);
        }
    }

    /** The window of what has happened, or is fixed. */
    public static Window on(LocalDate day) {
        return new Window(day, day, day);
    }

    /** When it follows this, after so long: lows upon the earliest, highs upon the latest. */
    public Window plus(DayCount length) {
        return new Window(
                earliest.plusDays(length.low()), likely.plusDays(length.typical()), latest.plusDays(length.high()));
    }

    /** When it must begin to be here in time: highs before the earliest, lows before the latest. */
    public Window minus(DayCount length) {
        return new Window(
                earliest.minusDays(length.high()), likely.minusDays(length.typical()), latest.minusDays(length.low()));
    }

    /** The same, cut short where it reaches past a day. */
    public Window notAfter(LocalDate day) {
        return new Window(Dates.earlier(earliest, day), Dates.earlier(likely, day), Dates.earlier(latest, day));
    }

    public boolean isExact() {
        return earliest.equals(latest);
    }

    public boolean contains(LocalDate day) {
        return span().contains(day);
    }

    /** All its days. */
    public DaySpan span() {
        return DaySpan.ofInclusive(earliest, latest);
    }

    /** From the earliest day to the latest. */
    public long width() {
        return ChronoUnit.DAYS.between(earliest, latest);
    }

    /** Of two things, when the first begins. */
    Window first(Window other) {
        return new Window(
                Dates.earlier(earliest, other.earliest),
                Dates.earlier(likely, other.likely),
                Dates.earlier(latest, other.latest));
    }

    /** Of two things, when the last begins. */
    Window last(Window other) {
        return new Window(
                Dates.later(earliest, other.earliest),
                Dates.later(likely, other.likely),
                Dates.later(latest, other.latest));
    }
}
