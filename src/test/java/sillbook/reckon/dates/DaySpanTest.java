// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class DaySpanTest {
    private static final LocalDate FEB_28 = LocalDate.of(2028, 2, 28);
    private static final LocalDate MAR_1 = LocalDate.of(2028, 3, 1);

    @Test
    void its_end_is_not_in_it() {
        DaySpan span = DaySpan.of(FEB_28, MAR_1);

        assertThat(span.contains(FEB_28)).isTrue();
        assertThat(span.contains(FEB_28.minusDays(1))).isFalse();
        assertThat(span.contains(MAR_1)).isFalse();
        assertThat(span.contains(MAR_1.minusDays(1))).isTrue();
    }

    @Test
    void the_leap_day_counts() {
        assertThat(DaySpan.of(FEB_28, MAR_1).days()).isEqualTo(2);
        assertThat(DaySpan.of(FEB_28.minusYears(1), MAR_1.minusYears(1)).days()).isEqualTo(1);
    }

    @Test
    void said_with_both_days_in_it_it_ends_a_day_later() {
        assertThat(DaySpan.ofInclusive(FEB_28, FEB_28)).isEqualTo(DaySpan.of(FEB_28, FEB_28.plusDays(1)));
        assertThat(DaySpan.ofInclusive(FEB_28, MAR_1).last()).isEqualTo(MAR_1);
        assertThat(DaySpan.of(FEB_28, MAR_1).last()).isEqualTo(LocalDate.of(2028, 2, 29));
    }

    @Test
    void a_span_may_be_empty_but_not_run_backward() {
        assertThat(DaySpan.of(MAR_1, MAR_1).isEmpty()).isTrue();
        assertThat(DaySpan.of(FEB_28, MAR_1).isEmpty()).isFalse();
        assertThatIllegalArgumentException().isThrownBy(() -> DaySpan.of(MAR_1, FEB_28));
    }

    @Test
    void spans_that_touch_or_share_days_are_joined() {
        DaySpan early = DaySpan.of(FEB_28.minusDays(9), FEB_28);
        DaySpan touching = DaySpan.of(FEB_28, MAR_1);
        DaySpan within = DaySpan.of(FEB_28.minusDays(5), FEB_28.minusDays(3));
        DaySpan apart = DaySpan.of(MAR_1.plusDays(1), MAR_1.plusDays(2));

        assertThat(DaySpan.joined(List.of(apart, touching, within, early)))
                .containsExactly(DaySpan.of(FEB_28.minusDays(9), MAR_1), apart);
        assertThat(DaySpan.joined(List.of())).isEmpty();
    }

    @Test
    void two_spans_share_the_days_that_are_in_both() {
        DaySpan winter = DaySpan.of(LocalDate.of(2027, 12, 1), MAR_1);
        DaySpan february = DaySpan.of(LocalDate.of(2028, 2, 1), LocalDate.of(2028, 4, 1));

        assertThat(winter.intersection(february)).contains(DaySpan.of(LocalDate.of(2028, 2, 1), MAR_1));
        assertThat(february.intersection(winter)).isEqualTo(winter.intersection(february));
        assertThat(winter.intersection(DaySpan.of(MAR_1, MAR_1.plusDays(9)))).isEmpty();
    }
}
