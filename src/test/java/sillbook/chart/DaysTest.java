// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class DaysTest {
    private static final LocalDate MONDAY = LocalDate.of(2027, 1, 11);
    private static final Days WEEK = Days.of(MONDAY, 7);

    @Test
    void theLastDayIsNotIn() {
        assertThat(WEEK.contains(MONDAY)).isTrue();
        assertThat(WEEK.contains(MONDAY.plusDays(7))).isFalse();
        assertThat(WEEK.contains(MONDAY.minusDays(1))).isFalse();
        assertThat(WEEK.count()).isEqualTo(7);
    }

    @Test
    void neighboursAndNothingOverlapWithNothing() {
        assertThat(WEEK.overlaps(Days.of(MONDAY.plusDays(6), 1))).isTrue();
        assertThat(WEEK.overlaps(Days.of(MONDAY.plusDays(7), 1))).isFalse();
        assertThat(WEEK.overlaps(Days.of(MONDAY.minusDays(1), 1))).isFalse();
        assertThat(WEEK.overlaps(Days.of(MONDAY.plusDays(2), 0))).isFalse();
        assertThat(Days.of(MONDAY.plusDays(2), 0).overlaps(WEEK)).isFalse();
    }

    @Test
    void daysDoNotEndBeforeTheyBegin() {
        assertThatThrownBy(() -> new Days(MONDAY, MONDAY.minusDays(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2027-01-10");
    }
}
