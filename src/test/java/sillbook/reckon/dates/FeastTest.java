// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class FeastTest {

    /** Two centuries; the file names the two programs, neither of them ours, that agree on it. */
    @ParameterizedTest
    @CsvFileSource(resources = "easter.csv", delimiter = ';')
    void easter_is_the_sunday_that_other_programs_print(int year, LocalDate western, LocalDate orthodox) {
        assertThat(Feast.EASTER.in(year)).isEqualTo(western);
        assertThat(Feast.ORTHODOX_EASTER.in(year)).isEqualTo(orthodox);
    }

    @ParameterizedTest
    @CsvSource({
        // The announcement of the year's feasts at Epiphany 2026, a parish of the Roman Catholic Church
        "ASH_WEDNESDAY, 2026-02-18",
        "WHIT_SUNDAY, 2026-05-24",
        "ADVENT_SUNDAY, 2026-11-29",
        // Christian Aid, calendar of 2012
        "MOTHERING_SUNDAY, 2012-03-18",
        // HuffPost UK, 2 March 2017
        "MOTHERING_SUNDAY, 2017-03-26",
        // A language school's page on both days, February 2010
        "MOTHERING_SUNDAY, 2010-03-14",
        "MOTHERS_DAY, 2010-05-09",
        // NewsBreak, April 2022
        "MOTHERS_DAY, 2022-05-08",
        // From memory
        "GOOD_FRIDAY, 2024-03-29",
        "PALM_SUNDAY, 2024-03-24",
        "EPIPHANY, 2027-01-06",
        "ORTHODOX_CHRISTMAS, 2027-01-07",
        "CANDLEMAS, 2027-02-02",
        "VALENTINES_DAY, 2027-02-14",
        "WOMENS_DAY, 2027-03-08",
        "CHRISTMAS, 2026-12-25",
        "NEW_YEARS_EVE, 2026-12-31"
    })
    void a_feast_falls_on_its_published_day(Feast feast, LocalDate day) {
        assertThat(feast.in(day.getYear())).isEqualTo(day);
    }

    /** The bounds are those of "movable Christian feasts" at encyclopedia.com. */
    @ParameterizedTest
    @CsvSource({"ASH_WEDNESDAY, 02-04, 03-10", "EASTER, 03-22, 04-25", "WHIT_SUNDAY, 05-10, 06-13"})
    void a_moving_feast_moves_within_its_bounds_and_reaches_both(Feast feast, String first, String last) {
        List<MonthDay> days = IntStream.rangeClosed(1583, 2600)
                .mapToObj(year -> MonthDay.from(feast.in(year)))
                .sorted()
                .toList();

        assertThat(days.get(0)).isEqualTo(MonthDay.parse("--" + first));
        assertThat(days.get(days.size() - 1)).isEqualTo(MonthDay.parse("--" + last));
    }

    /** "The nearest Sunday to the feast of St. Andrew", 30 November: the Book of Common Prayer's rule, not ours. */
    @Test
    void advent_begins_on_the_sunday_nearest_to_the_thirtieth_of_november() {
        for (int year = 1990; year <= 2050; year++) {
            LocalDate advent = Feast.ADVENT_SUNDAY.in(year);

            assertThat(advent.getDayOfWeek()).isEqualTo(DayOfWeek.SUNDAY);
            assertThat(Math.abs(ChronoUnit.DAYS.between(LocalDate.of(year, 11, 30), advent)))
                    .isLessThanOrEqualTo(3);
        }
    }

    @ParameterizedTest
    @EnumSource
    void the_next_time_a_feast_comes_is_on_the_day_or_within_thirteen_months(Feast feast) {
        LocalDate day = feast.in(2027);

        assertThat(feast.onOrAfter(day)).isEqualTo(day);
        assertThat(feast.onOrAfter(day.minusDays(1))).isEqualTo(day);
        assertThat(feast.onOrAfter(day.plusDays(1))).isEqualTo(feast.in(2028));
    }

    @ParameterizedTest
    @ValueSource(ints = {1582, 10_000, -33})
    void easter_is_not_reckoned_before_the_gregorian_calendar_or_beyond_its_four_digits(int year) {
        assertThatThrownBy(() -> Feast.EASTER.in(year)).hasMessageContaining(String.valueOf(year));
        assertThatThrownBy(() -> Feast.ORTHODOX_EASTER.in(year)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void easter_is_reckoned_at_both_ends_of_its_years() {
        assertThat(Feast.EASTER.in(1583).getDayOfWeek()).isEqualTo(DayOfWeek.SUNDAY);
        assertThat(Feast.ORTHODOX_EASTER.in(9999).getDayOfWeek()).isEqualTo(DayOfWeek.SUNDAY);
    }
}
