// SPDX-License-Identifier: Apache-2.0
package sillbook.words.logger;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What the lines of a thermometer's file come to.
 *
 * @param readings how many readings there are, suspicious ones among them
 * @param withoutValue lines with an instant and no temperature
 * @param others lines of other devices, or of another quantity
 * @param suspicious how many of the readings can hardly be true by their temperature
 * @param ahead how many of the readings are of a moment to come, and can hardly be true either
 * @param unreadable how many lines could not be read
 * @param strange the first of the suspicious and the unreadable lines
 * @param span the first and the last instant of the readings; empty where there are none
 * @param days the mean of each day that has a reading not suspicious, in thousandths of a degree
 * @param twice the days on which an hour of the clock came twice
 */
public record Counted(
        long readings,
        long withoutValue,
        long others,
        long suspicious,
        long ahead,
        long unreadable,
        List<Strange> strange,
        Optional<Span> span,
        NavigableMap<LocalDate, Integer> days,
        List<LocalDate> twice) {

    public Counted {
        strange = List.copyOf(strange);
        days = Collections.unmodifiableNavigableMap(new TreeMap<>(days));
        twice = List.copyOf(twice);
    }

    /**
     * A line that stands out.
     *
     * @param written what stands in it, cut where it is long
     * @param milli the temperature that can hardly be true; empty where the line could not be read
     */
    public record Strange(int line, String written, Optional<Integer> milli) {
        public boolean isUnreadable() {
            return milli.isEmpty();
        }
    }

    /** Both ends belong to it. */
    public record Span(Instant first, Instant last) {}
}
