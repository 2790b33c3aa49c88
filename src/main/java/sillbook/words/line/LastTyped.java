// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Entity;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.SpanReading;
import sillbook.model.SpotReading;

/** The reading of a place that was typed last, by when it was read. */
final class LastTyped {
    private LastTyped() {}

    /** Of the newest of either sort, that of one moment is the later if both are of one day. */
    static Optional<Entity<?>> of(Place place, Journal journal) {
        Optional<SpanReading> span = journal.spanReadings().all().stream()
                .filter(reading -> reading.place().equals(place.id()))
                .max(Comparator.comparing(SpanReading::to));
        Optional<SpotReading> spot = journal.spotReadings().all().stream()
                .filter(reading -> reading.place().equals(place.id()))
                .max(Comparator.comparing(SpotReading::at));
        boolean spanIsLater = span.isPresent()
                && spot.isPresent()
                && span.get()
                        .to()
                        .likely()
                        .isAfter(spot.get()
                                .at()
                                .atZone(journal.settings().zone())
                                .toLocalDate());
        Stream<Optional<? extends Entity<?>>> newest = spanIsLater ? Stream.of(span) : Stream.of(spot, span);
        return newest.flatMap(Optional::stream)
                .<Entity<?>>map(reading -> reading)
                .findFirst();
    }
}
