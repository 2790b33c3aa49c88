// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.bulbs;

import sillbook.model.Journal;
import sillbook.season.past.VarietyWinter;
import sillbook.text.Columns;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Right;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.list.Labelled;
import sillbook.words.VarietyWinterWords;

/** How a variety did in one winter, in the columns of its card. */
record RecordLine(VarietyWinter winter, Journal journal) implements Widget {
    private static final int POTS_END = 20;
    private static final int SCORE_END = 27;
    private static final int FLOWERS_END = 36;
    private static final int COLD = 38;
    private static final int COLD_COLUMNS = 22;
    private static final int NOTED = 61;

    /** Over the columns, in pencil. */
    static void heading(Rect line, Cells cells) {
        Right right = new Right(line, cells);
        cells.put(line.column() + Labelled.TEXT, line.row(), "winter", Style.PENCIL);
        right.put(POTS_END, "pots", Style.PENCIL);
        right.put(SCORE_END, "score", Style.PENCIL);
        right.put(FLOWERS_END, "flowers", Style.PENCIL);
        cells.put(line.column() + COLD, line.row(), "cold in", Style.PENCIL);
        cells.put(line.column() + NOTED, line.row(), "noted", Style.PENCIL);
    }

    @Override
    public void render(Rect line, Cells cells) {
        VarietyWinterWords words = new VarietyWinterWords(winter, journal);
        Right right = new Right(line, cells);
        cells.put(line.column() + Labelled.TEXT, line.row(), words.winter(), Style.INK);
        right.put(POTS_END, Integer.toString(winter.pots()), Style.INK);
        right.put(SCORE_END, words.score(), winter.mean().isPresent() ? Style.BOLD : Style.PENCIL);
        right.put(FLOWERS_END, words.flowers(), Style.INK);
        cells.put(line.column() + COLD, line.row(), Columns.fit(words.coldAt(), COLD_COLUMNS), Style.INK);
        Rect noted = line.withoutLeft(NOTED);
        cells.put(noted.column(), noted.row(), Columns.fit(words.noted(), noted.columns() - 1), Style.INK);
    }
}
