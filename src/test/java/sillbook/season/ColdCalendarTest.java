// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sillbook.model.Place.ColdDays;
import sillbook.reckon.dates.DaySpan;

class ColdCalendarTest {
    private static final ColdCalendar WINTER = new ColdCalendar(new ColdDays(MonthDay.of(11, 1), MonthDay.of(3, 15)));

    private static LocalDate day(String iso) {
        return LocalDate.parse(iso);
    }

    static LongStream seeds() {
        return LongStream.range(0, 300);
    }

    private static ColdCalendar any(Random random) {
        return new ColdCalendar(new ColdDays(anyDay(random), anyDay(random)));
    }

    /** Now and then the day that not every year has. */
    private static MonthDay anyDay(Random random) {
        return random.nextInt(5) == 0
                ? MonthDay.of(2, 29)
                : MonthDay.from(LocalDate.ofYearDay(2026, 1 + random.nextInt(365)));
    }

    private static LocalDate anyDate(Random random) {
        return LocalDate.of(2023, 1, 1).plusDays(random.nextInt(2000));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void countsAsManyDaysAsTheCalendarHasOneByOne(long seed) {
        Random random = new Random(seed);
        ColdCalendar calendar = any(random);
        LocalDate start = anyDate(random);
        DaySpan span = DaySpan.of(start, start.plusDays(random.nextInt(800)));
        long oneByOne = span.start()
                .datesUntil(span.endExclusive())
                .filter(calendar.days()::contains)
                .count();
        assertThat(calendar.coldDaysIn(span)).isEqualTo((int) oneByOne);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void findsTheNextColdDayAndTheEndOfTheCold(long seed) {
        Random random = new Random(seed);
        ColdCalendar calendar = any(random);
        LocalDate day = anyDate(random);
        LocalDate cold = calendar.coldOnOrAfter(day);
        assertThat(calendar.days().contains(cold)).isTrue();
        assertThat(day.datesUntil(cold).anyMatch(calendar.days()::contains)).isFalse();
        calendar.warmAfter(cold).ifPresent(end -> {
            assertThat(cold.datesUntil(end).allMatch(calendar.days()::contains)).isTrue();
            assertThat(calendar.days().contains(end)).isFalse();
            assertThat(calendar.coldEndedBefore(end)).isEqualTo(end);
            assertThat(calendar.coldOnOrAfter(end).minusDays(1))
                    .satisfies(
                            last -> assertThat(calendar.coldEndedBefore(last)).isEqualTo(end));
        });
    }

    @Test
    void coldAllYearHasNoEnd() {
        ColdCalendar fridge = new ColdCalendar(ColdDays.ALL_YEAR);
        assertThat(fridge.warmAfter(day("2026-10-01"))).isEmpty();
        assertThat(fridge.coldDaysIn(DaySpan.of(day("2026-10-01"), day("2026-10-31"))))
                .isEqualTo(30);
    }

    @Test
    void aWinterGoesOverNewYearAndALeapDay() {
        assertThat(WINTER.coldDaysIn(DaySpan.of(day("2027-10-01"), day("2028-05-01"))))
                .isEqualTo(135);
        assertThat(WINTER.coldOnOrAfter(day("2027-08-01"))).isEqualTo(day("2027-11-01"));
        assertThat(WINTER.coldOnOrAfter(day("2027-12-01"))).isEqualTo(day("2027-12-01"));
        assertThat(WINTER.warmAfter(day("2027-12-01"))).contains(day("2028-03-15"));
        assertThat(WINTER.warmAfter(day("2028-02-01"))).contains(day("2028-03-15"));
    }
}
