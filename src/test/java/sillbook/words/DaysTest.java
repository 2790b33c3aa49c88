// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.MonthDay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.model.Day;
import sillbook.reckon.dates.DaySpan;

class DaysTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 1, 12);

    @Test
    void aDayIsSaidShortInFullAloudAndInColumns() {
        assertThat(Days.day(TODAY)).isEqualTo("Tue 12 Jan");
        assertThat(Days.full(TODAY)).isEqualTo("Tue 12 Jan 2027");
        assertThat(Days.aloud(TODAY)).isEqualTo("Tuesday 12 January 2027");
        assertThat(Days.column(TODAY)).isEqualTo("Tue 12 Jan");
        assertThat(Days.column(LocalDate.of(2027, 1, 2))).isEqualTo("Sat  2 Jan");
        assertThat(Days.date(MonthDay.of(10, 15))).isEqualTo("15 Oct");
    }

    @Test
    void aDayThatIsNotAmongThoseSpokenOfHasItsYear() {
        DaySpan season = DaySpan.of(TODAY.minusMonths(6), TODAY.plusMonths(6));
        LocalDate after = LocalDate.of(2028, 2, 1);

        assertThat(Days.day(TODAY, season)).isEqualTo("Tue 12 Jan");
        assertThat(Days.day(after, season)).isEqualTo("Tue 1 Feb 2028");
        assertThat(Days.date(TODAY, season)).isEqualTo("12 Jan");
        assertThat(Days.date(after, season)).isEqualTo("1 Feb 2028");
        assertThat(Days.column(LocalDate.of(2027, 1, 2), season)).isEqualTo("Sat  2 Jan");
        assertThat(Days.column(after, season)).isEqualTo("1 Feb 2028");
    }

    @ParameterizedTest
    @CsvSource({
        "2027-01-02, 2027-01-11, 2-11 Jan,                   2 to 11 Jan",
        "2027-01-12, 2027-02-07, 12 Jan-7 Feb,               12 Jan to 7 Feb",
        "2026-12-28, 2027-01-04, 28 Dec-4 Jan,               28 Dec to 4 Jan",
        "2026-01-02, 2027-01-11, 2 Jan 2026-11 Jan 2027,     2 Jan 2026 to 11 Jan 2027",
        "2026-01-11, 2027-01-11, 11 Jan 2026-11 Jan 2027,    11 Jan 2026 to 11 Jan 2027",
        "2027-01-12, 2027-01-12, 12 Jan,                     12 Jan",
    })
    void daysInARow(LocalDate from, LocalDate to, String span, String sentence) {
        assertThat(Days.span(from, to)).isEqualTo(span);
        assertThat(Days.span(DaySpan.ofInclusive(from, to))).isEqualTo(span);
        assertThat(Days.fromTo(from, to)).isEqualTo(sentence);
    }

    @Test
    void theYearIsSaidWhereTheEndsAreNotOfOne() {
        assertThat(Days.fromToOfYears(LocalDate.of(2026, 10, 8), LocalDate.of(2027, 1, 12)))
                .isEqualTo("8 Oct 2026 to 12 Jan 2027");
        assertThat(Days.fromToOfYears(LocalDate.of(2027, 1, 2), LocalDate.of(2027, 1, 11)))
                .isEqualTo("2 to 11 Jan");
    }

    @ParameterizedTest
    @CsvSource({
        "2027-01-12, today",
        "2027-01-13, tomorrow",
        "2027-01-15, in 3 days",
        "2027-01-11, yesterday",
        "2026-10-14, 90 days ago",
    })
    void howFarADayIsAway(LocalDate day, String said) {
        assertThat(Days.away(day, TODAY)).isEqualTo(said);
    }

    @Test
    void anUncertainDayIsSaidAsItWasRemembered() {
        Day mid = new Day(LocalDate.of(2027, 1, 11), LocalDate.of(2027, 1, 15), LocalDate.of(2027, 1, 20));
        Day about = Day.about(LocalDate.of(2027, 2, 5), 3);

        assertThat(Days.day(mid)).isEqualTo("mid Jan");
        assertThat(Days.full(mid)).isEqualTo("mid Jan 2027");
        assertThat(Days.day(about)).isEqualTo("about 5 Feb");
        assertThat(Days.full(about)).isEqualTo("about 5 Feb 2027");
        assertThat(Days.day(Day.on(TODAY))).isEqualTo("Tue 12 Jan");
    }
}
