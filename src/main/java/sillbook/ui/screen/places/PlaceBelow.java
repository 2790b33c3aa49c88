// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import sillbook.season.PlaceClimate;
import sillbook.season.PlaceNow;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.State;

/** What stands under the list of places: the chart of the one under the cursor, and where there is room, or no chart, its pots. */
record PlaceBelow(State state, PlaceNow now, ChartSpan span) implements Widget {
    private static final int BLANK_ROWS = 1;

    PlaceChart chart() {
        return new PlaceChart(state, now.place(), span);
    }

    /** Why there is no chart. */
    private String remark() {
        PlaceClimate climate = state.almanac().climate(now.place().id());
        if (climate.isRead() && climate.lastDay().isEmpty()) {
            return "Read once; the next reading begins its curve.";
        }
        if (climate.isRead()) {
            return "Not read in " + state.journal().nameOf(state.timescale().season()) + ".";
        }
        return neverRead(state);
    }

    /** That a place was never read, and the keys that change it, as far as they are on. */
    static String neverRead(State state) {
        return state.copy().isReadOnly() ? "Never read." : "Never read. T takes a reading, I reads a file.";
    }

    /** How many rows it wants at least in a window so wide. */
    int fewestRows(int columns) {
        return chart().isShown(columns) ? PlaceChart.FEWEST_ROWS : BLANK_ROWS + PlacePots.FEWEST_ROWS;
    }

    @Override
    public void render(Rect area, Cells cells) {
        if (!chart().isShown(area.columns())) {
            Rect below = area.withoutTop(BLANK_ROWS);
            new PlacePots(state, now, remark()).render(below, cells.within(below));
            return;
        }
        int left = area.rows() - PlaceChart.MOST_ROWS - BLANK_ROWS;
        boolean holdsPots = left >= PlacePots.FEWEST_ROWS;
        int rows = holdsPots ? PlaceChart.MOST_ROWS : area.rows();
        Rect drawing = area.lines(0, rows);
        chart().render(drawing, cells.within(drawing));
        if (holdsPots) {
            Rect below = area.withoutTop(rows + BLANK_ROWS);
            new PlacePots(state, now, "").render(below, cells.within(below));
        }
    }
}
