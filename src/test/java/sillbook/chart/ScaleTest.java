// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScaleTest {
    private static final LevelScale CELLAR = new LevelScale(0, 2, 8);

    @ParameterizedTest(name = "{0} C in row {1} at level {2}")
    @CsvSource({"9.6, 2, 2", "9.0, 2, 1", "2.0, 6, 3", "0.0, 7, 3", "14.0, 0, 3", "-1.4, 7, 0"})
    void aValueStandsAtTheNearestLevel(double value, int row, int level) {
        assertThat(CELLAR.at(value)).hasValue(new LevelScale.Place(row, level));
    }

    @Test
    void beyondTheScaleNothingIsDrawn() {
        assertThat(CELLAR.at(14.3)).isEmpty();
        assertThat(CELLAR.at(-2)).isEmpty();
        assertThat(CELLAR.tick(0)).isEqualTo(14);
        assertThat(CELLAR.tick(7)).isZero();
    }

    @Test
    void noNumberIsRefused() {
        assertThatThrownBy(() -> CELLAR.at(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LevelScale(0, Double.NaN, 3)).isInstanceOf(IllegalArgumentException.class);
    }

    @RepeatedTest(100)
    void aCoveringScaleHoldsBothEnds(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        double low = random.nextDouble() * 40 - 20;
        double high = low + random.nextDouble() * 30;
        int rows = 1 + random.nextInt(10);
        LevelScale scale = LevelScale.covering(low, high, rows);

        assertThat(scale.at(low)).isPresent();
        assertThat(scale.at(high)).isPresent();
        assertThat(scale.tick(0) - scale.tick(rows - 1)).isCloseTo((rows - 1) * scale.tickStep(), within(1e-9));
    }

    @ParameterizedTest(name = "{0} to {1} in {2} rows: from {3} by {4}")
    @CsvSource({
        "0, 14, 8, 0, 2",
        "0, 15.6, 8, 0, 3",
        "0, 17, 8, 0, 3",
        "0, 27, 8, 0, 4",
        "8.02, 9.6, 7, 8, 0.5",
        "-0.4, 9.8, 8, 0, 2",
        "15, 21, 8, 15, 1",
        "0, 60, 8, 0, 10",
        "5, 5, 8, 5, 1"
    })
    void asFineAsRoundTicksAllow(double low, double high, int rows, double lowestTick, double step) {
        assertThat(LevelScale.covering(low, high, rows)).isEqualTo(new LevelScale(lowestTick, step, rows));
    }

    @Test
    void noTwoTicksReadTheSameToTheTenth() {
        assertThat(LevelScale.covering(9.61, 9.72, 14).tickStep()).isEqualTo(0.1);
    }

    /** The example of Heckbert's paper (Graphics Gems, 1990, p. 61): 105 to 543 with five ticks. From memory. */
    @Test
    void theTicksOfThePublishedExample() {
        assertThat(Ticks.covering(105, 543, 6)).containsExactly(100.0, 200.0, 300.0, 400.0, 500.0, 600.0);
    }

    @ParameterizedTest(name = "at least {0}: {1}")
    @CsvSource({"0.3, 0.5", "1, 1", "1.01, 2", "4, 5", "7, 10", "2000, 2000", "0, 1", "-3, 1", "NaN, 1"})
    void roundStepsAreOneTwoAndFive(double atLeast, double step) {
        assertThat(Ticks.roundStep(atLeast)).isCloseTo(step, within(1e-12));
    }

    @RepeatedTest(100)
    void ticksCoverTheValuesAndAreFew(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        double low = random.nextDouble() * 400 - 200;
        double high = low + random.nextDouble() * 100;
        int most = 2 + random.nextInt(8);
        var ticks = Ticks.covering(low, high, most);

        assertThat(ticks).hasSizeLessThanOrEqualTo(most).isSorted();
        assertThat(ticks.get(0)).isLessThanOrEqualTo(low);
        assertThat(ticks.get(ticks.size() - 1)).isGreaterThanOrEqualTo(high - 1e-9);
    }
}
