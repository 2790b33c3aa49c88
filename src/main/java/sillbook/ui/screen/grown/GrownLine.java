// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.grown;

import sillbook.model.Journal;
import sillbook.season.past.Grown;
import sillbook.text.Columns;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Right;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.list.Row;
import sillbook.words.GrownWords;

/**
 * One pot of one winter, and how it did.
 *
 * @param isOneVariety whether all pots of the list are of one, so that its name need not stand in every line
 */
record GrownLine(Grown grown, boolean isOneVariety, Journal journal) implements Widget {
    private static final int LABEL = 12;
    private static final int WHERE = 17;
    private static final int WHERE_COLUMNS = 15;
    private static final int WEEKS_END = 38;
    private static final int WITH = 40;
    private static final int WITH_COLUMNS = 17;
    private static final int SCORE_END = 62;
    private static final int FLOWERED_END = 70;
    private static final int NOTED = 72;

    /** Over the columns, in pencil. */
    static void heading(boolean isOneVariety, Rect line, Cells cells) {
        Right right = new Right(line, cells);
        put(Row.LABEL, "winter", Style.PENCIL, line, cells);
        put(LABEL, "pot", Style.PENCIL, line, cells);
        put(WHERE, "cold in", Style.PENCIL, line, cells);
        right.put(WEEKS_END, "weeks", Style.PENCIL);
        put(WITH, isOneVariety ? "potting mix" : "variety", Style.PENCIL, line, cells);
        right.put(SCORE_END, "score", Style.PENCIL);
        right.put(FLOWERED_END, "flowers", Style.PENCIL);
        put(NOTED, "noted", Style.PENCIL, line, cells);
    }

    private static void put(int column, String text, Style style, Rect line, Cells cells) {
        cells.put(line.column() + column, line.row(), text, style);
    }

    @Override
    public void render(Rect line, Cells cells) {
        GrownWords words = new GrownWords(grown, journal);
        Right right = new Right(line, cells);
        put(Row.LABEL, words.winter(), Style.INK, line, cells);
        put(LABEL, Columns.fit(grown.pot().label(), WHERE - LABEL - 1), Style.BOLD, line, cells);
        put(WHERE, Columns.fit(words.coldAt(), WHERE_COLUMNS), Style.INK, line, cells);
        right.put(WEEKS_END, words.weeks(), Style.INK);
        String with = isOneVariety ? words.pottingMix() : words.variety();
        put(WITH, Columns.fit(with, WITH_COLUMNS), Style.INK, line, cells);
        right.put(SCORE_END, words.score(), grown.rating().isPresent() ? Style.BOLD : Style.PENCIL);
        right.put(FLOWERED_END, words.flowers(), Style.INK);
        Rect noted = line.withoutLeft(NOTED);
        put(0, Columns.fit(grown.note().orElse(""), noted.columns() - 1), Style.INK, noted, cells);
    }
}
