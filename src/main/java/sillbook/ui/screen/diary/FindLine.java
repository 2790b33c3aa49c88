// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.diary;

import java.util.List;
import sillbook.model.Season;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Field;
import sillbook.ui.draw.FieldBox;
import sillbook.ui.draw.Point;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.State;
import sillbook.words.Counts;
import sillbook.words.DiaryEntry;

/** The field to find in, and how much is found: {@code 9 entries, 3 winters}. */
record FindLine(Field field, String found) implements Widget {
    private static final int FIELD = 8;
    private static final int FIELD_COLUMNS = 37;
    private static final int FOUND = 48;

    static FindLine of(State state, Field field, List<DiaryEntry> entries) {
        long winters =
                entries.stream().map(entry -> winter(state, entry)).distinct().count();
        String count = entries.size() == 1 ? "1 entry" : Counts.grouped(entries.size()) + " entries";
        return new FindLine(field, entries.isEmpty() ? "no entry" : count + ", " + Counts.of(winters, "winter"));
    }

    private static Season winter(State state, DiaryEntry entry) {
        return state.journal().seasonOf(entry.day().likely());
    }

    @Override
    public void render(Rect line, Cells cells) {
        cells.put(line.column() + 1, line.row(), "Find", Style.BOLD);
        new FieldBox(field).render(box(line), cells);
        cells.put(line.column() + FOUND, line.row(), found, Style.INK);
    }

    private static Rect box(Rect line) {
        return line.columns(FIELD, FIELD_COLUMNS);
    }

    /** Where the terminal's cursor stands while it is typed in. */
    Point cursor(int columns) {
        return new FieldBox(field).cursor(box(new Rect(0, 0, columns, 1)));
    }

    /** What can be looked for, under a list that leaves room for it. */
    static void hint(Rect area, Cells cells) {
        List<String> lines = List.of(
                "Words in any order; accents and capitals do not matter. Also: T8, trench,",
                "tulip, 2025-26, outcome, since 1 dec, -reading to leave readings out.");
        for (int i = 0; i < lines.size() && area.rows() > lines.size(); i++) {
            cells.put(area.column() + 4, area.row() + 1 + i, lines.get(i), Style.PENCIL);
        }
    }
}
