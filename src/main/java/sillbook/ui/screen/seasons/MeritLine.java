// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.seasons;

import sillbook.reckon.effects.Interval;
import sillbook.season.past.Merit;
import sillbook.text.Columns;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Right;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.list.Row;
import sillbook.words.MeritWords;

/** What one variety, potting mix or place has to its credit: a dot on the scale of scores, with the bar that holds the truth. */
record MeritLine(String name, Merit merit) implements Widget {
    private static final int NAME_COLUMNS = 18;
    private static final int POTS_END = 26;
    private static final int SCALE = 30;
    /** The figure after the scale, and the line's last column, which stays free. */
    private static final int RIGHT = 9;

    private static final int SCORES = 5;

    /** How many columns there are from one score to the next. */
    private static int step(Rect line) {
        return Math.max(1, (line.columns() - SCALE - RIGHT) / (SCORES - 1));
    }

    private static int scoreEnd(Rect line) {
        return SCALE + (SCORES - 1) * step(line) + RIGHT - 1;
    }

    /** Over the columns, in pencil. */
    static void heading(String what, Rect line, Cells cells) {
        Right right = new Right(line, cells);
        cells.put(line.column() + Row.LABEL, line.row(), what, Style.PENCIL);
        right.put(POTS_END, "pots", Style.PENCIL);
        for (int score = 1; score <= SCORES; score++) {
            cells.put(column(line, score), line.row(), Integer.toString(score), Style.PENCIL);
        }
        right.put(scoreEnd(line), "score", Style.PENCIL);
    }

    /** Where a score stands; one beyond the scale at its end. */
    private static int column(Rect line, double score) {
        double held = Math.max(1, Math.min(SCORES, score));
        return line.column() + SCALE + (int) Math.round((held - 1) * step(line));
    }

    @Override
    public void render(Rect line, Cells cells) {
        Style ink = merit.isFew() ? Style.PENCIL : Style.INK;
        Right right = new Right(line, cells);
        cells.put(line.column() + Row.LABEL, line.row(), Columns.fit(name, NAME_COLUMNS), Style.BOLD);
        right.put(POTS_END, Integer.toString(merit.scores()), Style.INK);
        if (merit.level().isEmpty()) {
            merit.plainMean()
                    .ifPresent(mean -> cells.put(
                            column(line, 1), line.row(), "plain mean " + MeritWords.score(mean), Style.PENCIL));
            return;
        }
        for (int score = 1; score <= SCORES; score++) {
            cells.put(column(line, score), line.row(), Sign.LEADER, Style.PENCIL);
        }
        merit.level().ifPresent(level -> {
            bar(level.eighty(), ink, line, cells);
            double score = level.score().value();
            cells.put(column(line, score), line.row(), merit.isFew() ? Sign.SCORE_OF_FEW : Sign.SCORE, ink);
            right.put(scoreEnd(line) - 1, MeritWords.score(score), ink);
        });
    }

    private void bar(Interval eighty, Style ink, Rect line, Cells cells) {
        for (int column = column(line, eighty.low()); column <= column(line, eighty.high()); column++) {
            cells.put(column, line.row(), merit.isFew() ? Sign.BAR_ASSUMED : Sign.BAR, ink);
        }
    }
}
