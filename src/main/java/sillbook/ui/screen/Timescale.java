// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.time.MonthDay;
import java.util.OptionalInt;
import sillbook.chart.Days;
import sillbook.chart.RulerLayout;
import sillbook.model.Season;

/**
 * Which stretch of time the ruler shows.
 *
 * @param season the winter under the ruler
 * @param cellsAWeek as chosen with the zoom key; empty where the width of the window chooses
 * @param pannedWeeks how far it was moved by hand, later being positive
 */
public record Timescale(Season season, OptionalInt cellsAWeek, int pannedWeeks) {
    private static final int WEEKS_A_PRESS = 4;
    private static final int MOST_CELLS = 3;

    public static Timescale of(Season season) {
        return new Timescale(season, OptionalInt.empty(), 0);
    }

    /** The ruler over a page of this width. */
    public RulerLayout ruler(State state, int columns) {
        MonthDay start = state.journal().settings().seasonStart();
        Days days = new Days(season.firstDay(start), season.endExclusive(start));
        int cells = cellsAWeek.orElse(RulerLayout.usualCellsAWeek(columns));
        return RulerLayout.of(days, state.shown().today(), columns, cells, pannedWeeks);
    }

    public Timescale earlier() {
        return new Timescale(season, cellsAWeek, pannedWeeks - WEEKS_A_PRESS);
    }

    public Timescale later() {
        return new Timescale(season, cellsAWeek, pannedWeeks + WEEKS_A_PRESS);
    }

    /** One step finer than what is shown now; after the finest the coarsest. */
    public Timescale zoomed(int shownCells) {
        return new Timescale(season, OptionalInt.of(shownCells % MOST_CELLS + 1), 0);
    }

    /** The same stretch of another season. */
    public Timescale over(Season other) {
        return new Timescale(other, cellsAWeek, pannedWeeks);
    }

    /** Another season, or this one from its beginning; the zoom stays. */
    public Timescale at(Season other) {
        return new Timescale(other, cellsAWeek, 0);
    }
}
