// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class SillTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 1, 12);
    private static final Days SEASON = new Days(LocalDate.of(2026, 7, 1), LocalDate.of(2027, 7, 1));
    private static final RulerLayout RULER = RulerLayout.of(SEASON, TODAY, 80);

    private static Sill.Cell cell(LocalDate from, int days, int index) {
        return Sill.of(RULER, List.of(Days.of(from, days))).cells().get(index);
    }

    @Test
    void eachWeekWithAPotInBloomHasAFlower() {
        LocalDate sunday = LocalDate.of(2026, 12, 20);
        assertThat(cell(sunday, 2, 23)).isEqualTo(Sill.Cell.EMPTY);
        assertThat(cell(sunday, 2, 24)).isEqualTo(Sill.Cell.FLOWER);
        assertThat(cell(sunday, 2, 25)).isEqualTo(Sill.Cell.FLOWER);
        assertThat(cell(sunday, 2, 26)).isEqualTo(Sill.Cell.EMPTY);
    }

    @Test
    void rightOfTheFoldFlowersAreForetold() {
        assertThat(cell(LocalDate.of(2027, 1, 18), 1, 29)).isEqualTo(Sill.Cell.FLOWER_FORETOLD);
    }

    @Test
    void inTodaysCellOnlyWhatIsInBloomCounts() {
        assertThat(cell(TODAY, 1, 28)).isEqualTo(Sill.Cell.FLOWER);
        assertThat(cell(TODAY.plusDays(1), 3, 28)).isEqualTo(Sill.Cell.EMPTY);
    }
}
