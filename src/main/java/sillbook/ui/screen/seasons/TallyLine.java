// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.seasons;

import sillbook.season.past.Grown.Rating;
import sillbook.season.past.Tally;
import sillbook.text.Columns;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Right;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.list.Row;
import sillbook.words.TallyWords;

/** How the pots that share something did, in its columns. */
record TallyLine(String name, Tally tally) implements Widget {
    private static final int NAME_COLUMNS = 19;
    private static final int POTS_END = 27;
    private static final int WELL_END = 33;
    private static final int FAIR_END = 39;
    private static final int FAILED_END = 47;
    private static final int AGAIN = 49;
    private static final int NOTED = 56;

    /** Over the columns, in pencil. */
    static void heading(String what, Rect line, Cells cells) {
        Right right = new Right(line, cells);
        cells.put(line.column() + Row.LABEL, line.row(), what, Style.PENCIL);
        right.put(POTS_END, "pots", Style.PENCIL);
        right.put(WELL_END, "well", Style.PENCIL);
        right.put(FAIR_END, "fair", Style.PENCIL);
        right.put(FAILED_END, "failed", Style.PENCIL);
        cells.put(line.column() + AGAIN, line.row(), "again", Style.PENCIL);
        cells.put(line.column() + NOTED, line.row(), "last noted", Style.PENCIL);
    }

    @Override
    public void render(Rect line, Cells cells) {
        Right right = new Right(line, cells);
        cells.put(line.column() + Row.LABEL, line.row(), Columns.fit(name, NAME_COLUMNS), Style.BOLD);
        if (tally.pots() == 0) {
            right.put(POTS_END, "-", Style.PENCIL);
            cells.put(line.column() + POTS_END + 2, line.row(), "no data", Style.PENCIL);
            return;
        }
        right.put(POTS_END, Integer.toString(tally.pots()), Style.INK);
        right.put(WELL_END, count(Rating.WELL), Style.INK);
        right.put(FAIR_END, count(Rating.FAIR), Style.INK);
        right.put(FAILED_END, count(Rating.FAILED), Style.INK);
        cells.put(line.column() + AGAIN, line.row(), again(), Style.INK);
        Rect noted = line.withoutLeft(NOTED);
        cells.put(noted.column(), noted.row(), Columns.fit(tally.noted().orElse(""), noted.columns() - 1), Style.INK);
    }

    private String count(Rating rating) {
        int count = tally.count(rating);
        return count == 0 ? "." : Integer.toString(count);
    }

    private String again() {
        return Columns.fit(TallyWords.again(tally), NOTED - AGAIN - 1);
    }
}
