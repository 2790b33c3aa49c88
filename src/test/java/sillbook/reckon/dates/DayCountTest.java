// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DayCountTest {

    @ParameterizedTest
    @CsvSource({"0, 0", "1, 7", "2.5, 18", "0.5, 4", "1.07, 7", "1.0714, 7", "1.072, 8", "15.5, 109", "521.8, 3653"})
    void part_weeks_become_whole_days_with_half_a_day_rounded_up(double weeks, int days) {
        assertThat(DayCount.daysOfWeeks(weeks)).isEqualTo(days);
        assertThat(DayCount.ofWeeks(weeks, weeks, weeks)).isEqualTo(DayCount.of(days));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -0.2, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 522, 1e300})
    void what_is_no_number_of_weeks_is_refused(double weeks) {
        assertThatIllegalArgumentException().isThrownBy(() -> DayCount.daysOfWeeks(weeks));
        assertThatIllegalArgumentException().isThrownBy(() -> DayCount.ofWeeks(1, 1, weeks));
    }

    @ParameterizedTest
    @CsvSource({"3, 2, 4", "2, 4, 3", "-1, 2, 3", "1, 2, 3654"})
    void low_typical_and_high_are_in_order_and_within_ten_years(int low, int typical, int high) {
        assertThatIllegalArgumentException().isThrownBy(() -> DayCount.of(low, typical, high));
    }

    @Test
    void ten_years_are_the_longest() {
        assertThat(DayCount.of(0, 0, 3653).high()).isEqualTo(3653);
        assertThat(DayCount.ofDays(0, 0, 3653).high()).isEqualTo(3653);
        assertThat(DayCount.of(0)).isEqualTo(DayCount.ZERO);
    }

    @Test
    void days_may_have_a_fraction_too() {
        assertThat(DayCount.ofDays(4.5, 5.49, 7)).isEqualTo(DayCount.of(5, 5, 7));
    }

    @Test
    void a_credit_shortens_each_of_the_three_but_never_below_nothing() {
        assertThat(DayCount.of(50, 70, 90).less(70)).isEqualTo(DayCount.of(0, 0, 20));
    }

    @Test
    void of_two_lengths_each_of_the_three_is_compared_with_its_like() {
        DayCount one = DayCount.of(10, 20, 60);
        DayCount other = DayCount.of(15, 18, 50);

        assertThat(one.atMost(other)).isEqualTo(DayCount.of(10, 18, 50));
        assertThat(one.atLeast(other)).isEqualTo(DayCount.of(15, 20, 60));
        assertThat(one.less(DayCount.of(1, 2, 3))).isEqualTo(DayCount.of(9, 18, 57));
    }

    @ParameterizedTest
    @CsvSource({
        "4, 5, 7, 14, 21, 28, 4, 5, 7",
        "4, 5, 7, 14, 14, 14, 5, 5, 5",
        "4, 5, 7, 14, 14, 15, 5, 5, 6",
        "4, 5, 7, 13, 14, 20, 4, 5, 7",
        "4, 5, 7, 2, 3, 3, 2, 3, 3",
        "4, 5, 7, 0, 0, 0, 0, 0, 0"
    })
    void a_part_is_no_longer_and_no_less_certain_than_its_whole(
            int low,
            int typical,
            int high,
            int least,
            int usual,
            int most,
            int partLow,
            int partTypical,
            int partHigh) {
        DayCount whole = DayCount.of(least, usual, most);
        DayCount part = DayCount.of(low, typical, high).partOf(whole);

        assertThat(part).isEqualTo(DayCount.of(partLow, partTypical, partHigh));
        assertThat(whole.less(part).typical() + part.typical()).isEqualTo(usual);
    }
}
