// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Spans one after another, as a thermometer with two hands gives them; what lies between two is not accounted for.
 *
 * @param spans in order, none beginning before the one ahead of it has ended
 */
public record SpanTrace(List<Span> spans) {
    public SpanTrace {
        spans = spans.stream().sorted(Comparator.comparing(Span::from)).toList();
        for (int i = 1; i < spans.size(); i++) {
            if (spans.get(i).from().isBefore(spans.get(i - 1).to())) {
                throw new IllegalArgumentException(spans.get(i - 1) + " and " + spans.get(i) + " overlap");
            }
        }
    }

    /**
     * The cold of all of it, in hours.
     *
     * @param hours from the first to the last
     * @param least effective, at least
     * @param most effective, at most
     * @param unaccounted between the spans
     */
    public record Had(int spans, double hours, double least, double most, double unaccounted) {}

    /** What of it lies between two moments: a span that is cut is taken to have had its lowest and highest in each part. */
    public SpanTrace between(Instant from, Instant to) {
        List<Span> inside = new ArrayList<>();
        for (Span span : spans) {
            Instant begun = span.from().isBefore(from) ? from : span.from();
            Instant ended = span.to().isAfter(to) ? to : span.to();
            if (begun.isBefore(ended)) {
                inside.add(new Span(begun, ended, span.lowest(), span.highest()));
            }
        }
        return new SpanTrace(inside);
    }

    /** The cold of all of it. */
    public Had cold(HourWorth worth) {
        double hours = spans.isEmpty()
                ? 0
                : new Span(spans.get(0).from(), spans.get(spans.size() - 1).to(), 0, 0).hours();
        return new Had(
                spans.size(),
                hours,
                sum(span -> span.least(worth)),
                sum(span -> span.most(worth)),
                hours - sum(Span::hours));
    }

    private double sum(ToDoubleFunction<Span> of) {
        return spans.stream().mapToDouble(of).sum();
    }

    /** The first moment at which so many effective hours may have been reached; empty where they cannot have been. */
    public Optional<Instant> reachedFirst(HourWorth worth, double hours) {
        return reached(span -> span.most(worth), hours);
    }

    /** The moment at which they were reached for certain; empty where that is not certain. */
    public Optional<Instant> reachedForCertain(HourWorth worth, double hours) {
        return reached(span -> span.least(worth), hours);
    }

    private Optional<Instant> reached(ToDoubleFunction<Span> of, double hours) {
        double sum = 0;
        for (Span span : spans) {
            double more = of.applyAsDouble(span);
            if (more > 0 && sum + more >= hours) {
                return Optional.of(span.at((hours - sum) / more));
            }
            sum += more;
        }
        return Optional.empty();
    }
}
