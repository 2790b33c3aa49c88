// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MonthNameTest {
    private static final Days SEASON = new Days(LocalDate.of(2026, 7, 1), LocalDate.of(2027, 7, 1));

    private static String line(LocalDate today, int columns) {
        RulerLayout ruler = RulerLayout.of(SEASON, today, columns);
        StringBuilder line = new StringBuilder(" ".repeat(columns));
        MonthName.of(ruler).forEach(name -> line.replace(name.column(), name.column() + 3, name.text()));
        ruler.foldColumn().ifPresent(column -> line.setCharAt(column, '|'));
        return line.substring(ruler.leftColumns());
    }

    @Test
    void namesStartInTheCellOfTheirFirst() {
        assertThat(line(LocalDate.of(2027, 1, 12), 80))
                .isEqualTo("Jul Aug  Sep Oct Nov  Dec Jan|  Feb Mar Apr May  Jun  ");
        assertThat(line(LocalDate.of(2027, 1, 12), 120))
                .isEqualTo(
                        "    Sep     Oct      Nov      Dec      Jan |     Feb     Mar     Apr      May      Jun       ");
    }

    @Test
    void aNameTheFoldWouldSplitStandsAfterIt() {
        assertThat(line(LocalDate.of(2027, 1, 1), 80))
                .isEqualTo("Jul Aug  Sep Oct Nov  Dec  |Jan Feb Mar Apr May  Jun  ");
    }

    @Test
    void orBeforeItWhereItWouldTouchTheNext() {
        assertThat(line(LocalDate.of(2026, 12, 8), 80))
                .isEqualTo("Jul Aug  Sep Oct Nov Dec|  Jan  Feb Mar Apr May  Jun  ");
    }

    @Test
    void whereBothNeighboursAreTooNearItIsLeftOut() {
        assertThat(line(LocalDate.of(2027, 1, 5), 80))
                .isEqualTo("Jul Aug  Sep Oct Nov  Dec   |   Feb Mar Apr May  Jun  ");
    }

    @ParameterizedTest
    @ValueSource(ints = {30, 52, 80, 100, 120, 133, 187})
    void namesNeverTouchEachOtherNorStandOnTheFold(int columns) {
        for (LocalDate today = SEASON.fromInclusive();
                today.isBefore(SEASON.toExclusive());
                today = today.plusDays(1)) {
            RulerLayout ruler = RulerLayout.of(SEASON, today, columns);
            int fold = ruler.foldColumn().orElse(-1);
            List<MonthName> names = MonthName.of(ruler);
            int free = ruler.leftColumns();
            for (MonthName name : names) {
                assertThat(name.column()).isGreaterThanOrEqualTo(free);
                assertThat(fold < name.column() || fold >= name.column() + 3).isTrue();
                free = name.column() + 4;
            }
            assertThat(free - 1).isLessThanOrEqualTo(columns);
        }
    }
}
