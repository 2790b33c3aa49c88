// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.util.List;
import org.junit.jupiter.api.Test;

class DaysOfWeekTest {
    @Test
    void aDayOfTheWeekIsFoundByItsBeginning() {
        assertThat(DaysOfWeek.find("sat")).contains(DayOfWeek.SATURDAY);
        assertThat(DaysOfWeek.find("saturdays")).contains(DayOfWeek.SATURDAY);
        assertThat(DaysOfWeek.find("tues")).contains(DayOfWeek.TUESDAY);
        assertThat(DaysOfWeek.find("holidays")).isEmpty();
        assertThat(DaysOfWeek.find("sa")).isEmpty();
    }

    @Test
    void severalAreSaidInTheirOrder() {
        assertThat(DaysOfWeek.say(List.of(DayOfWeek.SUNDAY, DayOfWeek.SATURDAY, DayOfWeek.MONDAY)))
                .isEqualTo("Mon, Sat and Sun");
        assertThat(DaysOfWeek.say(List.of())).isEqualTo("any day");
    }
}
