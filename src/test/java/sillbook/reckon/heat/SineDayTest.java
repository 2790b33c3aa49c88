// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Degree-days against the closed form and numerical integration of the sine by scipy 1.17, which agree. */
class SineDayTest {
    @ParameterizedTest
    @CsvSource({
        "5, 15, 10, 1.591549",
        "0, 12, 9, 0.653987",
        "-3, 8, 2, 2.007944",
        "2, 20, 7.2, 5.024159",
        "50, 70, 55, 6.089978",
        "0, 5, 5, 0",
        "6, 10, 5, 3",
        "5, 5, 4, 1",
        "5, 5, 5, 0",
    })
    void degreesAboveAThreshold(double lowest, double highest, double threshold, double degreeDays) {
        assertThat(new SineDay(lowest, highest).degreesAbove(threshold)).isCloseTo(degreeDays, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"50, 90, 50, 88, 19.809232", "40, 80, 50, 88, 12.179956"})
    void aHorizontalCutOff(double lowest, double highest, double threshold, double cutOff, double degreeDays) {
        assertThat(new SineDay(lowest, highest).degreesBetween(threshold, cutOff))
                .isCloseTo(degreeDays, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({
        "5, 15, 10, 12",
        "0, 10, 7.5, 8",
        "0, 10, 2.5, 16",
        "0, 10, 0, 24",
        "0, 10, 10, 0",
        "5, 5, 4, 24",
        "5, 5, 5, 0"
    })
    void hoursAboveAThreshold(double lowest, double highest, double threshold, double hours) {
        assertThat(new SineDay(lowest, highest).hoursAbove(threshold)).isCloseTo(hours, within(1e-9));
    }

    @Test
    void theLowestIsNotAboveTheHighest() {
        assertThatThrownBy(() -> new SineDay(5, 4)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SineDay(Double.NaN, 4)).isInstanceOf(IllegalArgumentException.class);
    }
}
