// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class DayTallyTest {
    private static final long HOUR = 3600;

    /** Spans of ten hours. */
    private record Ten(long from) implements DayTally.Span {
        static Ten around(long at) {
            return new Ten(Math.floorDiv(at, 10 * HOUR) * 10 * HOUR);
        }

        @Override
        public long toExclusive() {
            return from + 10 * HOUR;
        }

        long number() {
            return from / (10 * HOUR);
        }
    }

    private final List<DayTally.Sum<Ten>> sums = new ArrayList<>();

    /** Hours and temperatures in turn. */
    private void read(int bridgedHours, int correction, int... hoursAndCelsius) {
        DayTally<Ten> tally = new DayTally<>(Ten::around, Duration.ofHours(bridgedHours), correction, sums::add);
        for (int index = 0; index < hoursAndCelsius.length; index += 2) {
            tally.read(hoursAndCelsius[index] * HOUR, hoursAndCelsius[index + 1] * 1000);
        }
        tally.end();
    }

    @Test
    void aStretchIsPartedWhereASpanEnds() {
        read(40, 0, 5, 0, 35, 30);

        assertThat(sums)
                .extracting(
                        sum -> sum.span().number(),
                        DayTally.Sum::readings,
                        sum -> sum.tally().hours())
                .containsExactly(tuple(0L, 1, 5.0), tuple(1L, 0, 10.0), tuple(2L, 0, 10.0), tuple(3L, 1, 5.0));
        assertThat(sums.get(1).tally().lowest()).isCloseTo(5, within(1e-9));
        assertThat(sums.get(1).tally().highest()).isCloseTo(15, within(1e-9));
        assertThat(sums.get(1).tally().mean()).isCloseTo(10, within(1e-9));
    }

    @Test
    void overAGapNothingIsMadeUp() {
        read(6, 0, 1, 5, 3, 5, 25, 5, 27, 5);

        assertThat(sums)
                .extracting(
                        sum -> sum.span().number(),
                        DayTally.Sum::readings,
                        sum -> sum.tally().hours())
                .containsExactly(tuple(0L, 2, 2.0), tuple(2L, 2, 2.0));
    }

    @Test
    void oneReadingAloneTellsNothing() {
        read(6, 0, 1, 5);
        read(6, 0);
        assertThat(sums).isEmpty();
    }

    @Test
    void aReadingOnTheEdgeBelongsToWhatBegins() {
        read(20, 0, 0, 5, 10, 5, 20, 5);

        assertThat(sums)
                .extracting(
                        sum -> sum.span().number(),
                        DayTally.Sum::readings,
                        sum -> sum.tally().hours())
                .containsExactly(tuple(0L, 1, 10.0), tuple(1L, 1, 10.0));
    }

    @Test
    void whatIsReadWrongIsPutRight() {
        read(20, -600, 0, 5, 10, 5);

        assertThat(sums.get(0).tally().mean()).isCloseTo(4.4, within(1e-9));
    }
}
