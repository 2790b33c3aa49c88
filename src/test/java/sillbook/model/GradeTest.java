// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a packet prints of the size of its bulbs, read as a circumference. */
class GradeTest {
    private static Optional<Double> girth(String printed) {
        return new Purchase.Grade(printed, Optional.empty()).girth();
    }

    @ParameterizedTest
    @CsvSource({
        "12, 12",
        "12+, 12",
        "12/14, 13",
        "16/17, 16.5",
        "14-16, 15",
        "14 – 16 cm, 15",
        "7.5/8, 7.75",
        "'7,5', 7.5",
        "12 up, 12",
        "16/1, 16"
    })
    void ofARangeTheMiddleOfAPlusTheLeast(String printed, double girth) {
        assertThat(girth(printed)).contains(girth);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "DN I", "top size", "1234"})
    void whatIsNoSizeIsNone(String printed) {
        assertThat(girth(printed)).isEmpty();
    }
}
