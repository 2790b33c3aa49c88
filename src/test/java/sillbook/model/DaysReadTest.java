// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;

class DaysReadTest {
    private static final Id<Place> CELLAR = new Id<>(1, 1);
    private static final Id<Place> PORCH = new Id<>(1, 2);
    private static final LocalDate DAY = LocalDate.of(2026, 11, 3);
    private static final LastRead LAST = new LastRead(CELLAR, Instant.EPOCH, Temperature.ofCelsius(5.5));

    private static DayRead day(LocalDate day, int mean) {
        return new DayRead(CELLAR, day, 24, 24, 24, 24, 0, 0, mean, mean - 500, mean + 500);
    }

    @Test
    void keepsTheDaysOfEachPlaceInOrder() {
        DaysRead days = DaysRead.of(List.of(day(DAY.plusDays(1), 5000), day(DAY, 4000)), List.of(LAST));

        assertThat(days.at(CELLAR).keySet()).containsExactly(DAY, DAY.plusDays(1));
        assertThat(days.at(PORCH)).isEmpty();
        assertThat(days.lastAt(CELLAR)).contains(LAST);
        assertThat(days.lastAt(PORCH)).isEmpty();
    }

    @Test
    void areAskedOfTheJournalAndOutliveAnEdit() {
        DaysRead days = DaysRead.of(List.of(day(DAY, 4000)), List.of(LAST));
        Journal journal = Journal.empty(Settings.initial(ZoneOffset.UTC));

        assertThat(journal.daysRead()).isEqualTo(DaysRead.NONE);
        assertThat(journal.with(days).with(List.of()).daysRead()).isEqualTo(days);
        assertThat(journal.with(days)).isNotEqualTo(journal).hasSameHashCodeAs(journal);
        assertThat(days).hasSameHashCodeAs(DaysRead.of(List.of(day(DAY, 4000)), List.of()));
        assertThat(days.toString()).contains("2026-11-03");
        assertThat(days)
                .isNotEqualTo(DaysRead.of(List.of(day(DAY, 4000)), List.of()))
                .isNotEqualTo(DaysRead.of(List.of(), List.of(LAST)))
                .isNotEqualTo("days");
    }

    @Test
    void aDayOfWhichNothingIsKnownIsNone() {
        assertThatThrownBy(() -> new DayRead(CELLAR, DAY, 0, 0, 0, 0, 0, 0, 0, 0, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DayRead(CELLAR, DAY, 1, 24, 0, 0, 0, 0, 5000, 5001, 6000))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DayRead(CELLAR, DAY, 1, 24, 0, 0, 0, 0, 5000, 4000, 4999))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
