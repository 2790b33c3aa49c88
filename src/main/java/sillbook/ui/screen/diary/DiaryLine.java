// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.diary;

import java.time.LocalDate;
import sillbook.model.Day;
import sillbook.text.Columns;
import sillbook.text.Span;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.words.Days;
import sillbook.words.DiaryEntry;
import sillbook.words.DiarySearch;

/**
 * An entry in its columns, the words looked for underlined.
 *
 * @param labels of its pots; empty when it is about something else
 */
record DiaryLine(DiaryEntry entry, String labels, DiarySearch search) implements Widget {
    static final int DAY = 2;
    static final int POT = 19;
    private static final int ENTRY = 24;
    private static final int LABEL_COLUMNS = 16;
    private static final int APART = 2;
    /** From the right: the longest is {@code 12 Jan 2028}. */
    private static final int WRITTEN_FROM_RIGHT = 12;

    /** Over the columns, in pencil. */
    static void heading(Rect line, Cells cells) {
        cells.put(line.column() + 1, line.row(), "day", Style.PENCIL);
        cells.put(line.column() + POT, line.row(), "pot", Style.PENCIL);
        cells.put(line.column() + ENTRY, line.row(), "entry", Style.PENCIL);
        cells.put(line.right() - WRITTEN_FROM_RIGHT, line.row(), "written", Style.PENCIL);
    }

    /** Whether the whole of what it says is seen in lines of that width. */
    boolean isWhole(int columns) {
        return Width.of(entry.says()) <= columns - says() - APART - WRITTEN_FROM_RIGHT;
    }

    private String shownLabels() {
        return Columns.fit(labels, LABEL_COLUMNS);
    }

    /** Where the words begin: beside a long label further on. */
    private int says() {
        return Math.max(ENTRY, POT + Width.of(shownLabels()) + APART);
    }

    @Override
    public void render(Rect line, Cells cells) {
        cells.put(line.column() + DAY, line.row(), day(entry.day()), Style.INK);
        put(line.column() + POT, line.row(), shownLabels(), Style.BOLD, cells);
        int room = line.columns() - says() - APART - WRITTEN_FROM_RIGHT;
        put(line.column() + says(), line.row(), Columns.fit(entry.says(), room), Style.INK, cells);
        entry.writtenOn()
                .ifPresent(day -> cells.put(line.right() - WRITTEN_FROM_RIGHT, line.row(), written(day), Style.INK));
    }

    private void put(int column, int row, String text, Style style, Cells cells) {
        cells.put(column, row, text, style);
        for (Span found : search.in(text)) {
            cells.restyle(new Rect(column + found.fromInclusive(), row, found.columns(), 1), Style::withUnderline);
        }
    }

    private static String day(Day day) {
        return day.isExact() ? Days.column(day.likely()) + " " + day.likely().getYear() : Days.full(day);
    }

    private String written(LocalDate day) {
        boolean isSameYear = day.getYear() == entry.day().likely().getYear();
        return isSameYear ? Days.column(day) : Days.date(day) + " " + day.getYear();
    }
}
