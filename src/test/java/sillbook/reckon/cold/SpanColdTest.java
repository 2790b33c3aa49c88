// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpanColdTest {
    @ParameterizedTest
    @CsvSource({
        "3, 8, 100, 100, true",
        "2, 9, 100, 100, true",
        "1, 8, 50, 100, false",
        "3, 11, 50, 100, false",
        "-2, 1, 0, 50, false",
        "10, 14, 0, 75, false",
        "-3, -1, 0, 0, true",
        "15, 20, 0, 0, true",
    })
    void theTwoEndsBoundIt(double lowest, double highest, double least, double most, boolean isCertain) {
        SpanCold span = SpanCold.of(100, lowest, highest, ColdWeight.USUAL);
        assertThat(span).isEqualTo(new SpanCold(100, least, most));
        assertThat(span.isCertain()).isEqualTo(isCertain);
    }

    @Test
    void thereIsNoSpanBackwards() {
        assertThatThrownBy(() -> SpanCold.of(-1, 3, 8, ColdWeight.USUAL)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SpanCold.of(1, 8, 3, ColdWeight.USUAL)).isInstanceOf(IllegalArgumentException.class);
    }
}
