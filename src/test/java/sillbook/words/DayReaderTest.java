// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.model.Day;

class DayReaderTest {
    /** A Tuesday. */
    private static final LocalDate TODAY = LocalDate.of(2027, 1, 12);

    private final DayReader back = DayReader.back(TODAY);
    private final DayReader ahead = DayReader.ahead(TODAY);

    @ParameterizedTest
    @CsvSource({
        "today,           2027-01-12, 2027-01-12",
        "TODAY,           2027-01-12, 2027-01-12",
        "yesterday,       2027-01-11, 2027-01-11",
        "tomorrow,        2027-01-13, 2027-01-13",
        "+10,             2027-01-22, 2027-01-22",
        "-3,              2027-01-09, 2027-01-09",
        "+2wk,            2027-01-26, 2027-01-26",
        "- 1 week,        2027-01-05, 2027-01-05",
        "in 3 days,       2027-01-15, 2027-01-15",
        "3 days ago,      2027-01-09, 2027-01-09",
        "2 weeks ago,     2026-12-29, 2026-12-29",
        "fri,             2027-01-08, 2027-01-15",
        "Friday,          2027-01-08, 2027-01-15",
        "tue,             2027-01-12, 2027-01-19",
        "last tue,        2027-01-05, 2027-01-05",
        "next fri,        2027-01-15, 2027-01-15",
        "on fri,          2027-01-08, 2027-01-15",
        "14 nov,          2026-11-14, 2027-11-14",
        "14nov,           2026-11-14, 2027-11-14",
        "14th of November,2026-11-14, 2027-11-14",
        "nov 14,          2026-11-14, 2027-11-14",
        "14. Nov.,        2026-11-14, 2027-11-14",
        "14 nov 2025,     2025-11-14, 2025-11-14",
        "nov 14 2025,     2025-11-14, 2025-11-14",
        "2026-11-14,      2026-11-14, 2026-11-14",
        "2026-1-4,        2026-01-04, 2026-01-04",
        "14.11.,          2026-11-14, 2027-11-14",
        "14.11.2025,      2025-11-14, 2025-11-14",
        "11/14/2025,      2025-11-14, 2025-11-14",
        "4/4,             2026-04-04, 2027-04-04",
        "Tue 12 Jan,      2027-01-12, 2027-01-12",
        "Thu 14 Jan,      2027-01-14, 2027-01-14",
        "Wed 14 Jan,      2026-01-14, 2026-01-14",
        "Tue 12 Jan 2027, 2027-01-12, 2027-01-12",
    })
    void aDayIsFoundBehindForFactsAndAheadForPlans(String said, LocalDate behind, LocalDate coming) {
        assertThat(back.parse(said)).isEqualTo(Heard.as(Day.on(behind)));
        assertThat(ahead.parse(said)).isEqualTo(Heard.as(Day.on(coming)));
    }

    @ParameterizedTest
    @CsvSource({
        "14 jan, 2027-01-14",
        "12 feb, 2027-02-12",
        "13 feb, 2026-02-13",
    })
    void aFactOfTheNextWeeksIsNotTakenForLastYears(String said, LocalDate meant) {
        assertThat(back.parse(said)).isEqualTo(Heard.as(Day.on(meant)));
    }

    @Test
    void aLeapDayIsFoundInTheNextYearThatHasOne() {
        LocalDate leapDay = LocalDate.of(2028, 2, 29);

        assertThat(ahead.parse("29 feb")).isEqualTo(Heard.as(Day.on(leapDay)));
        assertThat(DayReader.back(leapDay.plusDays(40)).parse("29 feb")).isEqualTo(Heard.as(Day.on(leapDay)));
        assertThat(back.parse("29 feb").complaint()).isPresent();
    }

    @ParameterizedTest
    @CsvSource({
        "10 jan, 2027-01-10",
        "12 dec, 2026-12-12",
        "11 dec, 2027-12-11",
    })
    void aPlanOfThePastWeeksIsNotTakenForNextYears(String said, LocalDate meant) {
        assertThat(ahead.parse(said)).isEqualTo(Heard.as(Day.on(meant)));
    }

    @ParameterizedTest
    @CsvSource({
        "about 5 dec,       2026-12-02, 2026-12-05, 2026-12-08",
        "~ 5 dec,           2026-12-02, 2026-12-05, 2026-12-08",
        "around last fri,   2027-01-05, 2027-01-08, 2027-01-11",
        "early feb 2026,    2026-02-01, 2026-02-05, 2026-02-10",
        "beginning of oct,  2026-10-01, 2026-10-05, 2026-10-10",
        "mid jan 2027,      2027-01-11, 2027-01-15, 2027-01-20",
        "mid-January 2027,  2027-01-11, 2027-01-15, 2027-01-20",
        "end of oct,        2026-10-21, 2026-10-26, 2026-10-31",
        "late feb 2027,     2027-02-21, 2027-02-26, 2027-02-28",
        "about mid oct,     2026-10-11, 2026-10-15, 2026-10-20",
        "in november,       2026-11-01, 2026-11-15, 2026-11-30",
        "early feb,         2027-02-01, 2027-02-05, 2027-02-10",
        "early mar,         2026-03-01, 2026-03-05, 2026-03-10",
    })
    void whatIsNotQuiteKnownStaysSo(String said, LocalDate earliest, LocalDate likely, LocalDate latest) {
        assertThat(back.parse(said)).isEqualTo(Heard.as(new Day(earliest, likely, latest)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "31 nov | November has 30 days | 31 nov is no day: November has 30 days. Write another, as 30 nov or +10.",
                "nov 31 | November has 30 days | 31 nov is no day: November has 30 days. Write another, as 30 nov or +10.",
                "29 feb 2027 | February 2027 has 28 days"
                        + " | 29 feb is no day: February 2027 has 28 days. Write another, as 28 feb or +10.",
                "30 feb | February 2026 has 28 days"
                        + " | 30 feb is no day: February 2026 has 28 days. Write another, as 28 feb or +10.",
                "3/4 | 3 Apr or 4 Mar? | That may be 3 Apr or 4 Mar. Write the month as a word, as 3 apr.",
                "3.4.2026 | 3 Apr or 4 Mar? | That may be 3 Apr or 4 Mar. Write the month as a word, as 3 apr.",
                "14.13. | a year has 12 months | 14 is no month: a year has 12. Write the month as a word, as 14 nov.",
                "2026-13-01 | a year has 12 months | 13 is no month: a year has 12. Write the month as a word, as 14 nov.",
                "14 nov 1026 | 1900 to 2199 | The year 1026 is out of reach. Write one from 1900 to 2199.",
                "Fri 12 Jan 2027 | 12 Jan 2027 is a Tuesday | 12 Jan 2027 is a Tuesday, not a Friday."
                        + " Write the date alone, or the day of the week alone.",
                "soon | a day, as 14 nov or +10"
                        + " | 'soon' is no day. Write it as today, fri, +10, 14 nov or 2026-11-14.",
            })
    void whatIsNoDayIsSaidWithAWayOut(String said, String brief, String sentence) {
        assertThat(back.parse(said)).isEqualTo(Heard.not(brief, sentence));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "6", "19 cm", "mar", "cool room", "14 oaks", "marrow lane", "may 5 pots", "1/2 cup", "+12345"
            })
    void whatDoesNotLookLikeADayIsLeftToOthers(String said) {
        assertThat(back.tryParse(said)).isEmpty();
    }

    @Test
    void aRoughDayIsRefusedWhereOneDayIsAsked() {
        assertThat(ahead.parseExact("15 feb")).isEqualTo(Heard.as(LocalDate.of(2027, 2, 15)));
        assertThat(ahead.parseExact("early feb").complaint())
                .contains(new Complaint(
                        "one day only", "'early feb' is more than one day. Write one, as 14 nov or +10."));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void whateverDayIsSaidReadsBackAsTheSame(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            LocalDate day = TODAY.plusDays(random.nextInt(20_000) - 10_000);
            LocalDate lately = TODAY.minusDays(random.nextInt(300));
            assertReadsBack(Day.on(day), Days.full(day));
            assertReadsBack(Day.on(day), Days.aloud(day));
            assertReadsBack(Day.on(day), Days.away(day, TODAY));
            assertReadsBack(Day.about(day, DayReader.ABOUT), Days.full(Day.about(day, DayReader.ABOUT)));
            assertReadsBack(Day.on(lately), Days.day(lately));
            assertReadsBack(Day.on(lately), Days.column(lately));
            assertReadsBack(Day.on(lately), Days.date(lately));
            for (Rough part : Rough.values()) {
                Day rough = part.of(YearMonth.from(day));
                assertReadsBack(rough, Days.full(rough));
            }
        }
    }

    private void assertReadsBack(Day day, String said) {
        assertThat(back.parse(said)).as(said).isEqualTo(Heard.as(day));
    }
}
