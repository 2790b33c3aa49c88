// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BloomLengthTest {
    @ParameterizedTest
    @CsvSource({"2, 15, 9.899495", "2, 10, 14", "2.5, 15, 11.067972", "2.5, 20, 7"})
    void daysAtAnotherTemperature(double factor, double celsius, double days) {
        assertThat(new BloomLength(7, 20, factor).daysAt(celsius)).isCloseTo(days, within(1e-6));
    }

    @Test
    void threeDaysWarmThenCool() {
        BloomLength bloom = new BloomLength(7, 20, BloomLength.USUAL_FACTOR);
        assertThat(3 + bloom.daysLeft(3, 20, 12)).isCloseTo(11.325532, within(1e-6));
        assertThat(bloom.daysLeft(8, 20, 12)).isZero();
    }

    /** Worked out from the published trials of daffodils in store: what a week at 4 C costs of life at 21 C. */
    @Test
    void theRangeOfTheFactorHoldsTheTrials() {
        assertThat(7 / new BloomLength(1, 21, 3.24).daysAt(4)).isCloseTo(0.95, within(0.01));
        assertThat(4 / new BloomLength(1, 20, 2.03).daysAt(3)).isCloseTo(1.2, within(0.01));
        assertThat(6 / new BloomLength(1, 20, 2.26).daysAt(3)).isCloseTo(1.5, within(0.01));
    }

    @Test
    void noBloomLastsNothing() {
        assertThatThrownBy(() -> new BloomLength(0, 20, 2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new BloomLength(7, 20, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
