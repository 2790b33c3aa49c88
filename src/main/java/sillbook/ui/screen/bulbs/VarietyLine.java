// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.bulbs;

import java.util.Locale;
import java.util.stream.IntStream;
import sillbook.model.Season;
import sillbook.model.Settings;
import sillbook.season.VarietyNow;
import sillbook.text.Columns;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Right;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.list.Row;
import sillbook.words.Lengths;
import sillbook.words.RecordWords;

/**
 * A variety in its columns.
 *
 * @param season the three before it are told one by one
 */
record VarietyLine(VarietyNow now, Season season, Settings settings) implements Widget {
    static final int KIND = 23;
    private static final int NAME_COLUMNS = 18;
    private static final int KIND_COLUMNS = 18;
    private static final int HEIGHT_END = 45;
    private static final int IN_HAND_END = 55;
    private static final int WINTERS = 3;
    private static final int FIRST_WINTER_END = 59;
    private static final int WINTER_COLUMNS = 3;
    private static final int MEAN_END = 74;
    private static final int POTS_END = 79;
    /** Where there is room, the note. */
    private static final int NOTE = 82;

    /** Over the columns, in pencil. */
    static void heading(Season season, Settings settings, Rect line, Cells cells) {
        Right right = new Right(line, cells);
        cells.put(line.column() + Row.LABEL, line.row(), "variety", Style.PENCIL);
        cells.put(line.column() + KIND, line.row(), "kind", Style.PENCIL);
        right.put(HEIGHT_END, Lengths.unit(settings.lengths()), Style.PENCIL);
        right.put(IN_HAND_END, "in hand", Style.PENCIL);
        winters().forEach(back -> right.put(end(back), year(before(season, back)), Style.PENCIL));
        right.put(MEAN_END, "mean", Style.PENCIL);
        right.put(POTS_END, "pots", Style.PENCIL);
    }

    /** How many seasons back, the farthest first. */
    private static IntStream winters() {
        return IntStream.rangeClosed(1, WINTERS).map(nth -> WINTERS + 1 - nth);
    }

    private static int end(int back) {
        return FIRST_WINTER_END + (WINTERS - back) * WINTER_COLUMNS;
    }

    private static Season before(Season season, int back) {
        return new Season(season.year() - back);
    }

    /** {@code 25}: the last two digits of the year it begins in. */
    private static String year(Season season) {
        return String.format(Locale.ROOT, "%02d", Math.floorMod(season.year(), 100));
    }

    @Override
    public void render(Rect line, Cells cells) {
        Right right = new Right(line, cells);
        String name = "'" + now.variety().name() + "'";
        cells.put(line.column() + Row.LABEL, line.row(), Columns.fit(name, NAME_COLUMNS), Style.BOLD);
        String kind = Columns.fit(now.variety().kind().toString(), KIND_COLUMNS);
        cells.put(line.column() + KIND, line.row(), kind, Style.INK);
        right.put(HEIGHT_END, height(), Style.INK);
        right.put(IN_HAND_END, Integer.toString(now.inHand()), Style.INK);
        winters().forEach(back -> right.put(end(back), score(before(season, back)), Style.INK));
        right.put(MEAN_END, RecordWords.mean(now), now.pots() == 0 ? Style.PENCIL : Style.INK);
        right.put(POTS_END, now.pots() == 0 ? "-" : Integer.toString(now.pots()), Style.INK);
        Rect beyond = line.withoutLeft(NOTE);
        cells.put(beyond.column(), beyond.row(), Columns.fit(now.variety().note(), beyond.columns() - 1), Style.INK);
    }

    private String height() {
        return now.variety()
                .height()
                .map(tall -> Lengths.number(tall, settings.lengths()))
                .orElse("?");
    }

    private String score(Season winter) {
        return now.winters().stream()
                .filter(scored -> scored.season().equals(winter))
                .findFirst()
                .map(RecordWords::score)
                .orElse(".");
    }
}
