// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.junit.jupiter.api.Test;

/** Published schedules, worked out again. Each test names the one who published it. */
class WorkedSchedulesTest {

    /** Hyacinth: bloom on 1 March, out two weeks before, 15 weeks cold, from about 1 November (Iowa State University). */
    @Test
    void a_hyacinth_for_the_first_of_march_is_cold_from_about_the_first_of_november() {
        Need hyacinth = Need.ofCold(DayCount.ofWeeks(15, 15, 15), DayCount.ofWeeks(2, 2, 2));

        Schedule schedule = Schedule.reckon(hyacinth, Facts.NONE.withWish(LocalDate.of(2027, 3, 1)))
                .orElseThrow();

        LocalDate start = schedule.stages().cold().orElseThrow().likely();
        assertThat(Math.abs(ChronoUnit.DAYS.between(LocalDate.of(2026, 11, 1), start)))
                .isLessThanOrEqualTo(2);
    }
}
