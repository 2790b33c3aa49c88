// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.reckon.heat.SineDay;

/** By hand, and the days by numerical integration in scipy 1.17. */
class ColdWeightTest {
    private static final ColdWeight USUAL = ColdWeight.USUAL;

    @ParameterizedTest
    @CsvSource({
        "-1, 0",
        "0, 0",
        "0.5, .25",
        "1, .5",
        "1.7, .85",
        "2, 1",
        "5, 1",
        "9, 1",
        "10, .75",
        "11, .5",
        "12, .25",
        "13, 0",
        "14, 0"
    })
    void ofAnHour(double celsius, double weight) {
        assertThat(USUAL.at(celsius)).isCloseTo(weight, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"1, .25", "2, 1", "5, 4", "9, 8", "10, 8.875", "13, 10", "20, 10", "-3, 0"})
    void addedUpOverTheTemperatures(double celsius, double sum) {
        assertThat(USUAL.sumTo(celsius)).isCloseTo(sum, within(1e-12));
    }

    @Test
    void evenlyFromOneToAnother() {
        assertThat(24 * USUAL.between(0, 20)).isCloseTo(12, within(1e-9));
        assertThat(USUAL.between(10, 10)).isCloseTo(.75, within(1e-12));
        assertThat(USUAL.between(4, 12)).isEqualTo(USUAL.between(12, 4), within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"5, 12.8, 16.849100", "-2.1, 5.6, 13.516138", "-7.1, 0, 0", "3, 9, 24"})
    void ofADay(double lowest, double highest, double hours) {
        assertThat(USUAL.of(new SineDay(lowest, highest))).isCloseTo(hours, within(1e-6));
    }

    @Test
    void itsPointsAreInOrder() {
        assertThatThrownBy(() -> new ColdWeight(0, 0, 9, 13)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new ColdWeight(0, 10, 9, 13)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new ColdWeight(0, 2, 13, 13)).isInstanceOf(IllegalArgumentException.class);
    }
}
