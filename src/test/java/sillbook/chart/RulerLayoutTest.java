// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.chart.RulerLayout.TodayLies;

class RulerLayoutTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 1, 12);
    private static final Days SEASON = season(2026);

    private static Days season(int year) {
        return new Days(LocalDate.of(year, 7, 1), LocalDate.of(year + 1, 7, 1));
    }

    @ParameterizedTest(name = "{0} columns: {1} cells a week, {2} weeks, left part of {3}")
    @CsvSource({
        "80, 1, 53, 26",
        "100, 1, 53, 46",
        "119, 1, 53, 65",
        "120, 2, 46, 27",
        "132, 2, 52, 27",
        "133, 2, 53, 26",
        "187, 3, 53, 27",
        "240, 3, 53, 80",
        "40, 1, 13, 26",
        "27, 1, 0, 26",
        "0, 1, 0, 0"
    })
    void theRulerStandsFlushRightAndTheLeftPartTakesTheRest(int columns, int cellsAWeek, int weeks, int left) {
        RulerLayout ruler = RulerLayout.of(SEASON, TODAY, columns);

        assertThat(ruler.cellsAWeek()).isEqualTo(cellsAWeek);
        assertThat(ruler.weeks()).isEqualTo(weeks);
        assertThat(ruler.leftColumns()).isEqualTo(left);
    }

    @Test
    void theFirstCellIsTheWeekThatHoldsTheSeasonsFirstDay() {
        RulerLayout ruler = RulerLayout.of(SEASON, TODAY, 80);

        assertThat(ruler.days(0)).isEqualTo(Days.of(LocalDate.of(2026, 6, 29), 7));
        assertThat(ruler.days(52).toExclusive()).isEqualTo(LocalDate.of(2027, 7, 5));
    }

    @Test
    void theFoldComesAfterTodaysCellAndMovesWhatFollows() {
        RulerLayout ruler = RulerLayout.of(SEASON, TODAY, 80);

        assertThat(ruler.todayCell()).hasValue(28);
        assertThat(ruler.foldColumn()).hasValue(55);
        assertThat(ruler.column(28)).isEqualTo(54);
        assertThat(ruler.column(29)).isEqualTo(56);
        assertThat(ruler.column(52)).isEqualTo(79);
        assertThat(ruler.isForetold(28)).isFalse();
        assertThat(ruler.isForetold(29)).isTrue();
    }

    @Test
    void twoAndThreeCellsPartAWeekAtFridayAndAtWednesdayAndSaturday() {
        RulerLayout two = RulerLayout.of(SEASON, TODAY, 133);
        assertThat(two.days(0)).isEqualTo(Days.of(LocalDate.of(2026, 6, 29), 4));
        assertThat(two.days(1)).isEqualTo(Days.of(LocalDate.of(2026, 7, 3), 3));
        RulerLayout three = RulerLayout.of(SEASON, TODAY, 187);
        assertThat(three.days(0)).isEqualTo(Days.of(LocalDate.of(2026, 6, 29), 2));
        assertThat(three.days(1)).isEqualTo(Days.of(LocalDate.of(2026, 7, 1), 3));
        assertThat(three.days(2)).isEqualTo(Days.of(LocalDate.of(2026, 7, 4), 2));
    }

    @Test
    void whatDoesNotFitIsLeftOutFromTheFront() {
        RulerLayout ruler = RulerLayout.of(SEASON, TODAY, 120);

        assertThat(ruler.days(0).fromInclusive()).isEqualTo(LocalDate.of(2026, 8, 17));
        assertThat(ruler.foldColumn()).hasValue(70);
        assertThat(RulerLayout.of(season(2027), TODAY, 120).days(0).fromInclusive())
                .isEqualTo(LocalDate.of(2027, 8, 16));
    }

    @ParameterizedTest(name = "on {0} the ruler begins on {1}")
    @CsvSource({
        "2026-07-01, 2026-06-29",
        "2026-07-20, 2026-07-06",
        "2026-08-16, 2026-07-27",
        "2026-08-17, 2026-08-17",
        "2026-09-10, 2026-08-17"
    })
    void whenTodayWouldFallOutsideTheRulerBeginsTwoWeeksBefore(LocalDate today, LocalDate begins) {
        RulerLayout ruler = RulerLayout.of(SEASON, today, 120);

        assertThat(ruler.days(0).fromInclusive()).isEqualTo(begins);
        assertThat(ruler.todayLies()).isEqualTo(TodayLies.HERE);
    }

    @Test
    void theDaysOfARare54thWeekGoWithThe53rd() {
        Days leap = season(2011);
        assertThat(leap.fromInclusive().getDayOfWeek()).hasToString("FRIDAY");
        Days long54 = season(2035);
        assertThat(long54.fromInclusive().getDayOfWeek()).hasToString("SUNDAY");
        assertThat(long54.count()).isEqualTo(366);
        for (int columns : new int[] {80, 133, 187}) {
            RulerLayout ruler = RulerLayout.of(long54, TODAY, columns);
            LocalDate lastDay = LocalDate.of(2036, 6, 30);
            assertThat(ruler.cell(lastDay)).hasValue(ruler.cells() - 1);
            assertThat(ruler.days(ruler.cells() - 1).toExclusive()).isEqualTo(lastDay.plusDays(1));
        }
    }

    @Test
    void anotherSeasonHasNoFoldButSaysWhereTodayLies() {
        RulerLayout next = RulerLayout.of(season(2027), TODAY, 80);
        assertThat(next.foldColumn()).isEmpty();
        assertThat(next.todayLies()).isEqualTo(TodayLies.LEFT);
        assertThat(next.column(52)).isEqualTo(78);
        RulerLayout last = RulerLayout.of(season(2025), TODAY, 80);
        assertThat(last.todayLies()).isEqualTo(TodayLies.RIGHT);
        assertThat(last.isForetold(52)).isFalse();
    }

    @Test
    void panningStaysWithinTheSeason() {
        RulerLayout wide = RulerLayout.of(SEASON, TODAY, 80, 3, 0);
        assertThat(wide.weeks()).isEqualTo(17);
        assertThat(wide.firstWeek()).isEqualTo(26);
        assertThat(RulerLayout.of(SEASON, TODAY, 80, 3, 4).firstWeek()).isEqualTo(30);
        assertThat(RulerLayout.of(SEASON, TODAY, 80, 3, 400).firstWeek()).isEqualTo(36);
        assertThat(RulerLayout.of(SEASON, TODAY, 80, 3, -400).firstWeek()).isZero();
    }

    @Test
    void todayPannedOutOfSightLiesBesideWhatIsShown() {
        assertThat(RulerLayout.of(SEASON, TODAY, 80, 3, 10).todayLies()).isEqualTo(TodayLies.LEFT);
        assertThat(RulerLayout.of(SEASON, TODAY, 80, 3, -26).todayLies()).isEqualTo(TodayLies.RIGHT);
    }

    @RepeatedTest(100)
    void cellsFollowEachOtherAndEveryDayFindsItsOwn(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        LocalDate start = LocalDate.of(1990 + random.nextInt(100), 1 + random.nextInt(12), 1);
        Days season = new Days(start, start.plusYears(1));
        LocalDate today = start.plusDays(random.nextInt(900) - 200);
        int columns = random.nextInt(260);
        int cellsAWeek = 1 + random.nextInt(3);
        RulerLayout ruler = RulerLayout.of(season, today, columns, cellsAWeek, random.nextInt(60) - 30);
        for (int cell = 0; cell < ruler.cells(); cell++) {
            Days days = ruler.days(cell);
            int expected = cell;
            days.fromInclusive()
                    .datesUntil(days.toExclusive())
                    .forEach(day -> assertThat(ruler.cell(day)).isEqualTo(OptionalInt.of(expected)));
            if (cell > 0) {
                assertThat(days.fromInclusive()).isEqualTo(ruler.days(cell - 1).toExclusive());
            }
            assertThat(ruler.column(cell)).isLessThan(columns);
        }
    }
}
