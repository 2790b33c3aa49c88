// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.card;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import sillbook.model.Event;
import sillbook.model.Journal;
import sillbook.model.Subject;
import sillbook.text.Columns;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Labelled;
import sillbook.ui.screen.list.Row;
import sillbook.words.Days;
import sillbook.words.Entries;

/**
 * An entry on a card: its day, and what happened.
 *
 * @param day as wide in every line
 */
public record EntryLine(Journal journal, Event event, String day) implements Widget {
    private static final int APART = 2;

    /** Of something that lives for one season. */
    public static EntryLine of(Journal journal, Event event) {
        return new EntryLine(journal, event, Days.column(event.day().likely()));
    }

    /** Of something that stays over the years. */
    public static EntryLine withYear(Journal journal, Event event) {
        LocalDate day = event.day().likely();
        return new EntryLine(journal, event, Days.column(day) + " " + day.getYear());
    }

    /** All that was written of something that stays, the newest first, under a heading; nothing where nothing was. */
    public static List<Row> newestFirst(Journal journal, Subject subject, String heading) {
        List<Row> rows = new ArrayList<>();
        journal.history(subject)
                .forEach(event -> rows.add(withYear(journal, event).row()));
        if (!rows.isEmpty()) {
            rows.add(Row.heading(heading));
        }
        Collections.reverse(rows);
        return rows;
    }

    public Row row() {
        return Row.of(new Thing.OfEvent(event.id()), this);
    }

    @Override
    public void render(Rect area, Cells cells) {
        Rect line = area.withoutLeft(Labelled.TEXT);
        Rect beside = line.withoutLeft(Width.of(day) + APART);
        cells.put(line.column(), line.row(), day, Style.INK);
        String said = Columns.fit(new Entries(journal).say(event.what()), beside.columns() - 1);
        cells.put(beside.column(), beside.row(), said, Style.INK);
    }
}
