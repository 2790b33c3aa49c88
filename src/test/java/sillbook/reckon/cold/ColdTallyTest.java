// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.reckon.heat.SineDay;

class ColdTallyTest {
    private static final int SLICES = 100_000;

    private static ColdTally tally(double start, double end, double hours) {
        ColdTally tally = new ColdTally();
        tally.add(start, end, hours);
        return tally;
    }

    @ParameterizedTest
    @CsvSource({
        // start, end, effective, published, freezing, warm, of 8 hours; worked out by hand
        "5, 5, 8, 8, 0, 0",
        "1, 1, 4, 8, 0, 0",
        "0, 0, 0, 8, 0, 0",
        "-1, -1, 0, 0, 8, 0",
        "11, 11, 4, 4, 0, 0",
        "13, 13, 0, 0, 0, 0",
        "14, 14, 0, 0, 0, 8",
        "-2, 2, 2, 4, 4, 0",
        "2, -2, 2, 4, 4, 0",
        "9, 13, 4, 4, 0, 0",
        "11, 15, 1, 1, 0, 4"
    })
    void anEvenStretchIsCountedExactly(
            double start, double end, double effective, double published, double freezing, double warm) {
        ColdTally tally = tally(start, end, 8);

        assertThat(tally.hours()).isEqualTo(8);
        assertThat(tally.effective()).isCloseTo(effective, within(1e-12));
        assertThat(tally.published()).isCloseTo(published, within(1e-12));
        assertThat(tally.freezing()).isCloseTo(freezing, within(1e-12));
        assertThat(tally.warm()).isCloseTo(warm, within(1e-12));
        assertThat(tally.mean()).isCloseTo((start + end) / 2, within(1e-12));
        assertThat(tally.lowest()).isEqualTo(Math.min(start, end));
        assertThat(tally.highest()).isEqualTo(Math.max(start, end));
    }

    /** Against the sum of many thin slices. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void isTheSumOfManySlices(long seed) {
        Random random = new Random(seed);
        double start = random.nextDouble() * 25 - 6;
        double end = random.nextDouble() * 25 - 6;
        double published = 0;
        for (int slice = 0; slice < SLICES; slice++) {
            double celsius = start + (slice + 0.5) / SLICES * (end - start);
            published += celsius < 0 ? 0 : Math.max(0, Math.min(1, (13 - celsius) / 4));
        }
        assertThat(tally(start, end, 1).published()).isCloseTo(published / SLICES, within(1e-4));
    }

    @Test
    void whatLiesBetweenTwoTemperaturesIsWorthBetweenTwoBounds() {
        assertThat(PublishedCount.HOURS.least(-1, 5)).isZero();
        assertThat(PublishedCount.HOURS.least(0, 11)).isEqualTo(0.5);
        assertThat(PublishedCount.HOURS.most(-5, -1)).isZero();
        assertThat(PublishedCount.HOURS.most(-5, 20)).isEqualTo(1);
        assertThat(PublishedCount.HOURS.most(11, 20)).isEqualTo(0.5);
    }

    @Test
    void aSineDayIsWorthWhatItsHoursAre() {
        assertThat(PublishedCount.HOURS.of(new SineDay(2, 6))).isEqualTo(24, within(1e-9));
        assertThat(PublishedCount.HOURS.of(new SineDay(-3, 3))).isEqualTo(12, within(1e-9));
        assertThat(PublishedCount.HOURS.of(new SineDay(11, 11))).isEqualTo(12, within(1e-9));
    }
}
