// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.DayRead;
import sillbook.model.Logged;
import sillbook.model.Place;
import sillbook.model.ReadingSource;
import sillbook.model.SpanReading;
import sillbook.reckon.dates.DaySpan;

/**
 * What was read at a place over a stretch of time.
 *
 * @param sources what any of it was taken in from
 * @param readings in the order of time, as they were read
 * @param days what whole days came to
 * @param spans of which only the lowest and highest were read, with a day in it; the first first
 */
public record ReadStretch(
        Place place, List<ReadingSource> sources, List<Logged> readings, List<DayRead> days, List<SpanReading> spans) {
    public ReadStretch {
        sources = List.copyOf(sources);
        readings = List.copyOf(readings);
        days = List.copyOf(days);
        spans = List.copyOf(spans);
    }

    /** The days whose lowest and highest a reading of both tells: from that of the reset up to, not with, that on which it was read. */
    public static Optional<DaySpan> covered(SpanReading span) {
        return Optional.of(span.from().likely())
                .filter(from -> from.isBefore(span.to().likely()))
                .map(from -> DaySpan.of(from, span.to().likely()));
    }

    /** From one reading to the next, of which nothing between is known. */
    public record Gap(Instant from, Instant to) {
        public Duration length() {
            return Duration.between(from, to);
        }
    }

    public boolean isEmpty() {
        return readings.isEmpty() && days.isEmpty() && spans.isEmpty();
    }

    /** Where readings lie further apart than the place bridges. One that is suspicious closes no gap. */
    public List<Gap> gaps() {
        List<Gap> gaps = new ArrayList<>();
        Optional<Instant> last = Optional.empty();
        for (Logged reading : readings) {
            if (!reading.isSuspicious()) {
                last.map(before -> new Gap(before, reading.at()))
                        .filter(this::isGap)
                        .ifPresent(gaps::add);
                last = Optional.of(reading.at());
            }
        }
        return gaps;
    }

    private boolean isGap(Gap between) {
        return between.length().compareTo(place.bridges()) > 0;
    }
}
