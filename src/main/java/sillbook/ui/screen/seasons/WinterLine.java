// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.seasons;

import sillbook.season.past.Grown.Rating;
import sillbook.season.past.Summary;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Right;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.list.Row;
import sillbook.words.SummaryWords;

/** What one winter came to, in its columns. */
record WinterLine(Summary summary, String winter) implements Widget {
    private static final int POTS_END = 17;
    private static final int WELL_END = 23;
    private static final int FAIR_END = 29;
    private static final int FAILED_END = 37;
    private static final int BULBS_END = 52;
    private static final int DAYS_END = 64;
    private static final int COLD_END = 79;

    /** Over the columns, in pencil. */
    static void heading(Rect line, Cells cells) {
        Right right = new Right(line, cells);
        cells.put(line.column() + Row.LABEL, line.row(), "winter", Style.PENCIL);
        right.put(POTS_END, "pots", Style.PENCIL);
        right.put(WELL_END, "well", Style.PENCIL);
        right.put(FAIR_END, "fair", Style.PENCIL);
        right.put(FAILED_END, "failed", Style.PENCIL);
        right.put(BULBS_END, "bulbs flowered", Style.PENCIL);
        right.put(DAYS_END, "days bloom", Style.PENCIL);
        right.put(COLD_END, "weeks cold", Style.PENCIL);
    }

    @Override
    public void render(Rect line, Cells cells) {
        Right right = new Right(line, cells);
        cells.put(line.column() + Row.LABEL, line.row(), winter, Style.BOLD);
        right.put(POTS_END, Integer.toString(summary.pots()), Style.INK);
        right.put(WELL_END, count(Rating.WELL), Style.INK);
        right.put(FAIR_END, count(Rating.FAIR), Style.INK);
        right.put(FAILED_END, count(Rating.FAILED), Style.INK);
        right.put(BULBS_END, SummaryWords.bulbs(summary), Style.INK);
        right.put(DAYS_END, SummaryWords.days(summary), Style.INK);
        right.put(COLD_END, SummaryWords.span(summary), Style.INK);
    }

    private String count(Rating rating) {
        int count = summary.tally().count(rating);
        return count == 0 ? "." : Integer.toString(count);
    }
}
