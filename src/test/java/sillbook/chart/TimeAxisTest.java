// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class TimeAxisTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 1, 12);
    private static final Days SEASON = new Days(LocalDate.of(2026, 7, 1), LocalDate.of(2027, 7, 1));

    private static TimeAxis days(String from, long count, int partsADay) {
        return TimeAxis.of(Days.of(LocalDate.parse(from), count), partsADay, TODAY, 26, ZoneOffset.UTC);
    }

    @Test
    void theRulerIsAnAxisOfWeeks() {
        RulerLayout ruler = RulerLayout.of(SEASON, TODAY, 80, 1, 0);
        TimeAxis axis = TimeAxis.of(ruler, ZoneOffset.UTC);

        assertThat(axis.count()).isEqualTo(53);
        assertThat(axis.from(0)).isEqualTo(Instant.parse("2026-06-29T00:00:00Z"));
        assertThat(axis.to(0)).isEqualTo(Instant.parse("2026-07-06T00:00:00Z"));
        for (int cell = 0; cell < ruler.cells(); cell++) {
            assertThat(axis.column(cell)).isEqualTo(ruler.column(cell));
        }
        assertThat(axis.foldColumn()).isEqualTo(ruler.foldColumn());
    }

    @Test
    void aRulerWithoutRoomIsAnAxisWithoutParts() {
        TimeAxis none = TimeAxis.of(RulerLayout.of(SEASON, TODAY, 20, 1, 0), ZoneOffset.UTC);

        assertThat(none.count()).isZero();
        assertThat(none.part(TODAY)).isEmpty();
        assertThat(none.parts(TODAY)).isEmpty();
    }

    @Test
    void daysAreCutIntoEqualParts() {
        TimeAxis axis = days("2027-01-10", 4, 6);

        assertThat(axis.count()).isEqualTo(24);
        assertThat(Duration.between(axis.from(7), axis.to(7))).isEqualTo(Duration.ofHours(4));
        assertThat(axis.from(7)).isEqualTo(Instant.parse("2027-01-11T04:00:00Z"));
        assertThat(axis.part(Instant.parse("2027-01-11T07:59:59Z"))).hasValue(7);
        assertThat(axis.part(Instant.parse("2027-01-11T08:00:00Z"))).hasValue(8);
        assertThat(axis.part(Instant.parse("2027-01-14T00:00:00Z"))).isEmpty();
        assertThat(axis.part(Instant.parse("2027-01-09T23:59:59Z"))).isEmpty();
        assertThat(axis.part(LocalDate.of(2027, 1, 13))).hasValue(18);
    }

    @Test
    void theFoldStandsAfterTodaysLastPart() {
        assertThat(days("2027-01-10", 4, 6).foldAfter()).hasValue(17);
        assertThat(days("2027-01-10", 4, 6).foldColumn()).hasValue(26 + 18);
        assertThat(days("2027-01-10", 4, 6).column(17)).isEqualTo(26 + 17);
        assertThat(days("2027-01-10", 4, 6).column(18)).isEqualTo(26 + 19);
        assertThat(days("2027-01-13", 2, 6).foldAfter()).isEmpty();
        assertThat(days("2027-01-13", 2, 6).column(3)).isEqualTo(29);
        assertThat(days("2027-01-01", 5, 6).foldColumn()).isEmpty();
    }

    @Test
    void aDayOfTwentyFiveHoursHasLongerParts() {
        Days days = Days.of(LocalDate.of(2026, 10, 24), 3);
        TimeAxis axis = TimeAxis.of(days, 2, TODAY, 0, ZoneId.of("Europe/Berlin"));

        assertThat(Duration.between(axis.from(1), axis.to(1))).isEqualTo(Duration.ofHours(12));
        assertThat(Duration.between(axis.from(2), axis.to(2))).isEqualTo(Duration.ofMinutes(750));
        assertThat(axis.parts(LocalDate.of(2026, 10, 25))).containsExactly(2, 3);
    }

    @Test
    void aStretchTouchesThePartsItLiesIn() {
        TimeAxis axis = days("2027-01-10", 2, 2);
        Instant noon = Instant.parse("2027-01-10T12:00:00Z");

        assertThat(axis.parts(noon.minusSeconds(1), noon.plusSeconds(1))).containsExactly(0, 1);
        assertThat(axis.parts(noon, noon.plusSeconds(1))).containsExactly(1);
        assertThat(axis.parts(noon.minusSeconds(9), noon)).containsExactly(0);
        assertThat(axis.parts(noon, noon)).isEmpty();
        assertThat(axis.parts(Instant.EPOCH, noon)).containsExactly(0);
        assertThat(axis.parts(Instant.EPOCH, noon.plus(Duration.ofDays(90)))).containsExactly(0, 1, 2, 3);
        assertThat(axis.parts(noon.plus(Duration.ofDays(9)), noon.plus(Duration.ofDays(90))))
                .isEmpty();
    }

    @Test
    void timeGoesForward() {
        List<Instant> still = List.of(Instant.EPOCH, Instant.EPOCH);

        assertThatThrownBy(() -> new TimeAxis(ZoneOffset.UTC, still, 0, OptionalInt.empty()))
                .hasMessageContaining("no time passes");
    }
}
