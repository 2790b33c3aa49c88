// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.SpanReading;
import sillbook.reckon.cold.ColdWeight;
import sillbook.reckon.cold.Span;
import sillbook.reckon.cold.SpanTrace;

/**
 * What thermometers say of a pot's days in the cold, where its places were read while it stood there. Only lowest and highest are known, so
 * what counts is bounded. All in days.
 *
 * @param in the cold stage since it was potted, read or not
 * @param read of those
 * @param least of those that were read, what counts at least
 * @param most what counts at most
 */
public record ColdRead(double in, double read, double least, double most) {
    private static final double HOURS = 24;

    /** Empty where nothing was read while it stood in the cold. */
    public static Optional<ColdRead> of(Journal journal, PotLife life, LocalDate today) {
        List<ColdStretch> stretches = new ColdReading(journal, today).stretches(life.phases(), life.potted());
        List<SpanTrace> read = stretches.stream()
                .flatMap(stretch -> stretch.place().stream()
                        .map(place -> spans(journal, place)
                                .between(
                                        start(stretch.days().start()),
                                        start(stretch.days().endExclusive()))))
                .filter(trace -> !trace.spans().isEmpty())
                .toList();
        return read.isEmpty()
                ? Optional.empty()
                : Optional.of(new ColdRead(
                        stretches.stream().mapToInt(ColdStretch::daysIn).sum(),
                        sum(read, had -> had.hours() - had.unaccounted()),
                        sum(read, SpanTrace.Had::least),
                        sum(read, SpanTrace.Had::most)));
    }

    private static double sum(List<SpanTrace> traces, ToDoubleFunction<SpanTrace.Had> of) {
        return traces.stream()
                        .map(trace -> trace.cold(ColdWeight.USUAL))
                        .mapToDouble(of)
                        .sum()
                / HOURS;
    }

    /** Readings of a place, the first first; where two overlap, the one that began first holds for what both cover. */
    private static SpanTrace spans(Journal journal, Id<Place> place) {
        List<Span> spans = new ArrayList<>();
        Instant covered = Instant.MIN;
        for (SpanReading reading : of(journal, place).toList()) {
            Instant from = start(reading.from().likely());
            Instant to = start(reading.to().likely());
            Instant open = from.isBefore(covered) ? covered : from;
            if (open.isBefore(to)) {
                double lowest = reading.between().low().celsius();
                spans.add(new Span(open, to, lowest, reading.between().high().celsius()));
                covered = to;
            }
        }
        return new SpanTrace(spans);
    }

    private static Stream<SpanReading> of(Journal journal, Id<Place> place) {
        return journal.spanReadings().all().stream()
                .filter(reading -> reading.place().equals(place))
                .sorted(Comparator.comparing(
                                (SpanReading reading) -> reading.from().likely())
                        .thenComparing(reading -> reading.to().likely()));
    }

    private static Instant start(LocalDate day) {
        return day.atStartOfDay().toInstant(ZoneOffset.UTC);
    }
}
