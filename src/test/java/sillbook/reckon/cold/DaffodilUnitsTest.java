// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A. R. Rees and G. R. Hanks, Journal of Horticultural Science 59, 1984, 229-239: its two points, and the line between. */
class DaffodilUnitsTest {
    @ParameterizedTest
    @CsvSource({"2000, 30", "2125, 25.5", "2250, 21"})
    void daysToTheFlowerAtSixteen(double units, double days) {
        assertThat(DaffodilUnits.days(units).orElseThrow()).isCloseTo(days, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"1999", "2251"})
    void beyondTheTwoPointsNothingIsKnown(double units) {
        assertThat(DaffodilUnits.days(units)).isEmpty();
    }

    @Test
    void weeksAtNineDegrees() {
        assertThat(DaffodilUnits.of(13.605 * 7, 9)).isCloseTo(2000, within(0.1));
        assertThat(DaffodilUnits.of(15.306 * 7, 9)).isCloseTo(2250, within(0.1));
        assertThat(DaffodilUnits.of(10, 31)).isZero();
    }
}
