// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class WindowTest {
    private static final LocalDate DAY = LocalDate.of(2027, 1, 10);
    private static final Window WINDOW = new Window(DAY, DAY.plusDays(4), DAY.plusDays(9));

    @Test
    void forward_lows_are_added_to_the_earliest_and_highs_to_the_latest() {
        assertThat(WINDOW.plus(DayCount.of(1, 2, 3)))
                .isEqualTo(new Window(DAY.plusDays(1), DAY.plusDays(6), DAY.plusDays(12)));
    }

    @Test
    void backward_highs_come_off_the_earliest_and_lows_off_the_latest() {
        assertThat(WINDOW.minus(DayCount.of(1, 2, 3)))
                .isEqualTo(new Window(DAY.minusDays(3), DAY.plusDays(2), DAY.plusDays(8)));
    }

    @Test
    void it_is_cut_where_it_reaches_past_a_day() {
        assertThat(WINDOW.notAfter(DAY.plusDays(5))).isEqualTo(new Window(DAY, DAY.plusDays(4), DAY.plusDays(5)));
        assertThat(WINDOW.notAfter(DAY.minusDays(1))).isEqualTo(Window.on(DAY.minusDays(1)));
        assertThat(WINDOW.notAfter(DAY.plusDays(9))).isEqualTo(WINDOW);
    }

    @Test
    void both_its_ends_are_in_it() {
        assertThat(WINDOW.contains(DAY)).isTrue();
        assertThat(WINDOW.contains(DAY.plusDays(9))).isTrue();
        assertThat(WINDOW.contains(DAY.plusDays(10))).isFalse();
        assertThat(WINDOW.contains(DAY.minusDays(1))).isFalse();
        assertThat(WINDOW.span().days()).isEqualTo(10);
        assertThat(WINDOW.width()).isEqualTo(9);
    }

    @Test
    void it_is_exact_when_it_is_one_day() {
        assertThat(Window.on(DAY).isExact()).isTrue();
        assertThat(WINDOW.isExact()).isFalse();
    }

    @Test
    void its_days_are_in_order() {
        LocalDate next = DAY.plusDays(1);
        assertThatIllegalArgumentException().isThrownBy(() -> new Window(next, DAY, next));
        assertThatIllegalArgumentException().isThrownBy(() -> new Window(DAY, next, DAY));
    }

    @Test
    void of_two_the_first_and_the_last_are_taken_day_by_day() {
        Window other = new Window(DAY.minusDays(2), DAY.plusDays(6), DAY.plusDays(7));

        assertThat(WINDOW.first(other)).isEqualTo(new Window(DAY.minusDays(2), DAY.plusDays(4), DAY.plusDays(7)));
        assertThat(WINDOW.last(other)).isEqualTo(new Window(DAY, DAY.plusDays(6), DAY.plusDays(9)));
    }
}
