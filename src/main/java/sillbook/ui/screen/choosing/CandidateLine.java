// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.choosing;

import sillbook.model.Journal;
import sillbook.season.past.Candidate;
import sillbook.season.past.Merit;
import sillbook.text.Columns;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Right;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.list.Row;
import sillbook.words.CandidateWords;

/** A variety that could be grown: how many of it are taken, how it did, and what says most of it. */
record CandidateLine(Candidate candidate, Journal journal) implements Widget {
    private static final int NAME_COLUMNS = 18;
    private static final int TAKE_END = 26;
    private static final int SCORE_END = 34;
    private static final int POTS_END = 40;
    private static final int BECAUSE = 42;

    /** Over the columns, in pencil. */
    static void heading(Rect line, Cells cells) {
        Right right = new Right(line, cells);
        cells.put(line.column() + Row.LABEL, line.row(), "variety", Style.PENCIL);
        right.put(TAKE_END, "take", Style.PENCIL);
        right.put(SCORE_END, "score", Style.PENCIL);
        right.put(POTS_END, "pots", Style.PENCIL);
        cells.put(line.column() + BECAUSE, line.row(), "because", Style.PENCIL);
    }

    @Override
    public void render(Rect line, Cells cells) {
        CandidateWords words = new CandidateWords(candidate, journal);
        Right right = new Right(line, cells);
        Style ink = candidate.isSetAside() ? Style.PENCIL : Style.INK;
        Style name = candidate.isSetAside() ? Style.PENCIL : Style.BOLD;
        cells.put(
                line.column() + Row.LABEL,
                line.row(),
                Columns.fit("'" + candidate.variety().name() + "'", NAME_COLUMNS),
                name);
        candidate.chosen().ifPresent(bulbs -> right.put(TAKE_END, Integer.toString(bulbs), Style.BOLD));
        Style score = candidate.scores().size() <= Merit.FEW ? Style.PENCIL : ink;
        right.put(SCORE_END, words.score(), score);
        right.put(POTS_END, words.pots(), score);
        Rect because = line.withoutLeft(BECAUSE);
        cells.put(because.column(), because.row(), Columns.fit(words.because().orElse(""), because.columns() - 1), ink);
    }
}
