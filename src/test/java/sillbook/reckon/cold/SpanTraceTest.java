// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpanTraceTest {
    private static final Instant BEGINNING = Instant.parse("2026-10-01T00:00:00Z");

    private static Instant at(double hours) {
        return BEGINNING.plusSeconds(Math.round(hours * 3600));
    }

    private static Span span(double from, double to, double lowest, double highest) {
        return new Span(at(from), at(to), lowest, highest);
    }

    @ParameterizedTest
    @CsvSource({
        "3, 8, 100, 100, 100, 100",
        "2, 9, 100, 100, 100, 100",
        "1, 8, 50, 100, 100, 100",
        "3, 11, 50, 100, 0, 100",
        "-2, 1, 0, 50, 0, 100",
        "10, 14, 0, 75, 0, 0",
        "-3, -1, 0, 0, 0, 0",
        "15, 20, 0, 0, 0, 0",
        "0, 0, 0, 0, 0, 0",
    })
    void theTwoEndsBoundIt(
            double lowest, double highest, double least, double most, double strictLeast, double strictMost) {
        Span span = span(0, 100, lowest, highest);
        assertThat(span.least(ColdWeight.USUAL)).isEqualTo(least);
        assertThat(span.most(ColdWeight.USUAL)).isEqualTo(most);
        assertThat(span.least(StrictCount.HOURS)).isEqualTo(strictLeast);
        assertThat(span.most(StrictCount.HOURS)).isEqualTo(strictMost);
    }

    @Test
    void whatLiesBetweenIsNotAccountedFor() {
        SpanTrace trace = new SpanTrace(List.of(span(200, 300, 1, 8), span(0, 150, 3, 8)));
        assertThat(trace.cold(ColdWeight.USUAL)).isEqualTo(new SpanTrace.Had(2, 300, 200, 250, 50));
        assertThat(trace.between(at(100), at(250)).cold(ColdWeight.USUAL))
                .isEqualTo(new SpanTrace.Had(2, 150, 75, 100, 50));
        assertThat(trace.between(at(160), at(190)).cold(ColdWeight.USUAL)).isEqualTo(new SpanTrace.Had(0, 0, 0, 0, 0));
    }

    @Test
    void aNeedIsReachedBetweenTwoMoments() {
        SpanTrace trace = new SpanTrace(List.of(span(0, 100, 1, 8), span(100, 200, 15, 20), span(200, 400, 3, 8)));
        assertThat(trace.reachedFirst(ColdWeight.USUAL, 100)).contains(at(100));
        assertThat(trace.reachedForCertain(ColdWeight.USUAL, 100)).contains(at(250));
        assertThat(trace.reachedForCertain(ColdWeight.USUAL, 251)).isEmpty();
        assertThat(trace.reachedFirst(ColdWeight.USUAL, 301)).isEmpty();
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> span(5, 5, 3, 8)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> span(5, 6, 8, 3)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SpanTrace(List.of(span(0, 5, 3, 8), span(4, 6, 3, 8))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("overlap");
        assertThat(span(0, 1.5, 3, 8).hours()).isEqualTo(1.5, within(1e-12));
    }

    @Test
    void theStrictCountFollowsALineExactly() {
        assertThat(StrictCount.HOURS.between(-3, 9)).isEqualTo(.75, within(1e-12));
        assertThat(StrictCount.HOURS.between(12, 6)).isEqualTo(.5, within(1e-12));
        assertThat(StrictCount.HOURS.between(10, 12)).isZero();
        assertThat(StrictCount.HOURS.between(9, 9)).isEqualTo(1);
        assertThat(StrictCount.HOURS.between(0, 0)).isZero();
    }
}
