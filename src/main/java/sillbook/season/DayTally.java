// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.Duration;
import java.util.function.Consumer;
import sillbook.reckon.cold.ColdTally;

/**
 * Adds up readings in the order of time, span by span: between two readings the temperature is taken to go evenly, unless they lie further apart
 * than is bridged. What runs over the end of a span is parted there.
 *
 * @param <S> the spans
 */
public final class DayTally<S extends DayTally.Span> {
    private static final double MILLI = 1000;
    private static final double SECONDS_IN_HOUR = 3600;

    private final Spans<S> spans;
    private final long bridges;
    private final int correction;
    private final Consumer<Sum<S>> taking;
    private S span;
    private ColdTally tally = new ColdTally();
    private int readings;
    private boolean begun;
    private long lastAt;
    private double lastCelsius;

    /** A span of time, in seconds since 1970-01-01T00:00Z. */
    public interface Span {
        long from();

        long toExclusive();
    }

    /** Parts all time into spans. */
    @FunctionalInterface
    public interface Spans<S> {
        S around(long at);
    }

    /** What a span came to. */
    public record Sum<S>(S span, int readings, ColdTally tally) {}

    /**
     * @param correction added to each reading, in thousandths of a degree
     * @param taking is given each span of which anything is known, when it is over
     */
    public DayTally(Spans<S> spans, Duration bridges, int correction, Consumer<Sum<S>> taking) {
        this.spans = spans;
        this.bridges = bridges.toSeconds();
        this.correction = correction;
        this.taking = taking;
        this.span = spans.around(0);
    }

    /** The next reading, later than the one before; in thousandths of a degree. */
    public void read(long at, int milli) {
        double celsius = (milli + correction) / MILLI;
        if (begun && at - lastAt <= bridges) {
            go(at, celsius);
        }
        reach(at);
        readings++;
        begun = true;
        lastAt = at;
        lastCelsius = celsius;
    }

    private void go(long at, double celsius) {
        double rise = (celsius - lastCelsius) / (at - lastAt);
        long from = lastAt;
        double start = lastCelsius;
        while (at > span.toExclusive()) {
            double end = lastCelsius + rise * (span.toExclusive() - lastAt);
            add(start, end, from, span.toExclusive());
            from = span.toExclusive();
            start = end;
            reach(from);
        }
        add(start, celsius, from, at);
    }

    private void add(double start, double end, long from, long to) {
        if (to > from) {
            tally.add(start, end, (to - from) / SECONDS_IN_HOUR);
        }
    }

    private void reach(long at) {
        if (at >= span.toExclusive() || at < span.from()) {
            end();
            span = spans.around(at);
        }
    }

    /** There are no more, or none of this span. */
    public void end() {
        if (tally.hours() > 0) {
            taking.accept(new Sum<>(span, readings, tally));
            tally = new ColdTally();
        }
        readings = 0;
    }
}
