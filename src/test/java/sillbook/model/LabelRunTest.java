// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LabelRunTest {
    @ParameterizedTest
    @CsvSource({
        "T1-T6, T1, true",
        "T1-T6, t6, true",
        "t1-6, T3, true",
        "T1-T6, T7, false",
        "T2-T6, T1, false",
        "T1-T6, H3, false",
        "T1-T6, left of the door, false",
        "AB9-AB9, ab9, true"
    })
    void holdsTheLabelsBetweenItsEnds(String written, String label, boolean isInIt) {
        assertThat(LabelRun.parse(written))
                .hasValueSatisfying(run -> assertThat(run.contains(label)).isEqualTo(isInIt));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "T1", "T6-T1", "T1-H6", "1-6", "T1-", "T1-T6-T9", "T1-T12345"})
    void whatIsNoRunIsNone(String written) {
        assertThat(LabelRun.parse(written)).isEmpty();
    }
}
