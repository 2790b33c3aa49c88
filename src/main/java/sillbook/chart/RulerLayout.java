// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.OptionalInt;

/**
 * Where each week of a season stands across a page. Weeks begin on Monday; a week has from one to three cells; the first week is the one
 * that holds the season's first day. After the cell that holds today a column of its own is put in, the fold: left of it has happened,
 * right of it is foretold. Columns count from 0 at the page's left edge.
 *
 * @param firstWeek the season's week that stands first, counted from 0
 * @param weeks how many weeks are shown
 * @param leftColumns how many columns of the page lie left of the first cell
 */
public record RulerLayout(Days season, LocalDate today, int cellsAWeek, int firstWeek, int weeks, int leftColumns) {
    /** A season touches 53 weeks, rarely 54: then the days of the last go with the one before. */
    public static final int MOST_WEEKS = 53;

    public static final int MOST_CELLS_A_WEEK = 3;
    /** Cells the left part takes at least, and one for the fold. */
    private static final int LEAST_LEFT = 26;

    private static final int FOLD = 1;
    private static final int WEEKS_BEFORE_TODAY = 2;
    /** Days of the week, from Monday as 0, on which a cell begins; by cells a week. */
    private static final List<List<Integer>> CELL_STARTS = List.of(List.of(0), List.of(0, 4), List.of(0, 2, 5));

    private static final int WIDE = 120;
    private static final int VERY_WIDE = 187;

    /** Where today lies, seen from what is shown. */
    public enum TodayLies {
        HERE,
        LEFT,
        RIGHT
    }

    /** As many cells a week as a page of this width has unless asked otherwise. */
    public static int usualCellsAWeek(int columns) {
        int some = columns < WIDE ? 1 : 2;
        return columns < VERY_WIDE ? some : MOST_CELLS_A_WEEK;
    }

    /** As a page shows it by itself: zoom by its width, weeks left out from the front where not all fit. */
    public static RulerLayout of(Days season, LocalDate today, int columns) {
        return of(season, today, columns, usualCellsAWeek(columns), 0);
    }

    /**
     * With a zoom and panning of the reader's own.
     *
     * @param panned by how many weeks the page was moved on from where it stands by itself; kept within the season
     */
    public static RulerLayout of(Days season, LocalDate today, int columns, int cellsAWeek, int panned) {
        int fitting = Math.max(0, (columns - LEAST_LEFT - FOLD) / cellsAWeek);
        int weeks = Math.min(MOST_WEEKS, fitting);
        int hidden = MOST_WEEKS - weeks;
        int first = Math.max(0, Math.min(hidden, firstWeekUnmoved(season, today, hidden) + panned));
        return new RulerLayout(
                season, today, cellsAWeek, first, weeks, Math.max(0, columns - FOLD - weeks * cellsAWeek));
    }

    /** Weeks are left out from the front, when nothing stands in the cold yet; but today stays. */
    private static int firstWeekUnmoved(Days season, LocalDate today, int hidden) {
        if (!season.contains(today)) {
            return hidden;
        }
        int week = weekOf(season, today);
        return week >= hidden ? hidden : Math.max(0, week - WEEKS_BEFORE_TODAY);
    }

    public int cells() {
        return weeks * cellsAWeek;
    }

    /** The days of a cell. */
    public Days days(int cell) {
        int week = firstWeek + cell / cellsAWeek;
        int part = cell % cellsAWeek;
        LocalDate monday = firstMonday(season).plusWeeks(week);
        boolean lastOfWeek = part == cellsAWeek - 1;
        LocalDate from = monday.plusDays(starts().get(part));
        LocalDate to = lastOfWeek ? monday.plusWeeks(1) : monday.plusDays(starts().get(part + 1));
        boolean takesLeftOver =
                lastOfWeek && week == MOST_WEEKS - 1 && season.toExclusive().isAfter(to);
        return new Days(from, takesLeftOver ? season.toExclusive() : to);
    }

    /** The cell that holds a day, if it is shown. */
    public OptionalInt cell(LocalDate day) {
        int week = weekOf(season, day) - firstWeek;
        if (cells() == 0 || week < 0 || !day.isBefore(days(cells() - 1).toExclusive())) {
            return OptionalInt.empty();
        }
        int dayOfWeek = day.getDayOfWeek().getValue() - 1;
        int ofWeek = cellsAWeek;
        while (starts().get(ofWeek - 1) > dayOfWeek) {
            ofWeek--;
        }
        boolean leftOver = week >= weeks;
        return OptionalInt.of(leftOver ? cells() - 1 : week * cellsAWeek + ofWeek - 1);
    }

    /** The cell of today, if this is today's season and the cell is shown. */
    public OptionalInt todayCell() {
        return season.contains(today) ? cell(today) : OptionalInt.empty();
    }

    /** The column of the fold, which stands right after today's cell; there is none where today is not shown. */
    public OptionalInt foldColumn() {
        OptionalInt cell = todayCell();
        return cell.isPresent() ? OptionalInt.of(leftColumns + cell.getAsInt() + 1) : OptionalInt.empty();
    }

    public int column(int cell) {
        OptionalInt todayCell = todayCell();
        boolean beyondFold = todayCell.isPresent() && cell > todayCell.getAsInt();
        return leftColumns + cell + (beyondFold ? FOLD : 0);
    }

    /** Whether a cell lies wholly in the future; today's own counts as happened. */
    public boolean isForetold(int cell) {
        return days(cell).fromInclusive().isAfter(today);
    }

    public TodayLies todayLies() {
        if (todayCell().isPresent()) {
            return TodayLies.HERE;
        }
        LocalDate first = cells() == 0 ? season.fromInclusive() : days(0).fromInclusive();
        return today.isBefore(first) ? TodayLies.LEFT : TodayLies.RIGHT;
    }

    private List<Integer> starts() {
        return CELL_STARTS.get(cellsAWeek - 1);
    }

    private static LocalDate firstMonday(Days season) {
        LocalDate first = season.fromInclusive();
        return first.minusDays(first.getDayOfWeek().getValue() - 1);
    }

    /** Counted from 0; negative before the season's first week. */
    private static int weekOf(Days season, LocalDate day) {
        return (int) Math.floorDiv(ChronoUnit.DAYS.between(firstMonday(season), day), 7L);
    }
}
