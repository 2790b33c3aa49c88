// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StagesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 10, 1);

    private final Stages all =
            new Stages(Optional.of(Window.on(DAY)), Optional.of(week(13)), week(14), week(16), Optional.of(week(18)));
    private final Stages fewest = new Stages(Optional.empty(), Optional.empty(), week(0), week(5), Optional.empty());

    private static Window week(int number) {
        LocalDate day = DAY.plusWeeks(number);
        return new Window(day.minusDays(3), day, day.plusDays(3));
    }

    @Test
    void every_milestone_has_its_window() {
        assertThat(all.at(Milestone.COLD)).contains(Window.on(DAY));
        assertThat(all.at(Milestone.COOL_ROOM)).contains(week(13));
        assertThat(all.at(Milestone.WARM_ROOM)).contains(week(14));
        assertThat(all.at(Milestone.BLOOM)).contains(week(16));
        assertThat(all.at(Milestone.AFTER_BLOOM)).contains(week(18));
    }

    @Test
    void what_is_left_out_has_none() {
        assertThat(fewest.at(Milestone.COLD)).isEmpty();
        assertThat(fewest.at(Milestone.COOL_ROOM)).isEmpty();
        assertThat(fewest.at(Milestone.AFTER_BLOOM)).isEmpty();
    }

    @Test
    void it_leaves_the_cold_for_the_cool_room_or_else_for_the_warm() {
        assertThat(all.broughtOut()).isEqualTo(week(13));
        assertThat(fewest.broughtOut()).isEqualTo(week(0));
    }

    @Test
    void a_stage_likely_lasts_until_the_next_one_there_is() {
        assertThat(all.likelySpan(Milestone.COLD)).contains(DaySpan.of(DAY, DAY.plusWeeks(13)));
        assertThat(all.likelySpan(Milestone.BLOOM)).contains(DaySpan.of(DAY.plusWeeks(16), DAY.plusWeeks(18)));
        assertThat(fewest.likelySpan(Milestone.WARM_ROOM)).contains(DaySpan.of(DAY, DAY.plusWeeks(5)));
    }

    @Test
    void a_stage_without_a_start_or_an_end_has_no_span() {
        assertThat(fewest.likelySpan(Milestone.COLD)).isEmpty();
        assertThat(fewest.likelySpan(Milestone.BLOOM)).isEmpty();
        assertThat(all.likelySpan(Milestone.AFTER_BLOOM)).isEmpty();
    }
}
