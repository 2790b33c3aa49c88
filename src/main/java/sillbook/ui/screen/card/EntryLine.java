// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.card;

import sillbook.model.Event;
import sillbook.model.Journal;
import sillbook.text.Columns;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Labelled;
import sillbook.ui.screen.list.Row;
import sillbook.words.Days;
import sillbook.words.Entries;

/** An entry on a card: its day, and what happened. */
public record EntryLine(Journal journal, Event event) implements Widget {
    /** The day and the gap after it. */
    private static final int DAY = 12;

    public Row row() {
        return Row.of(new Thing.OfEvent(event.id()), this);
    }

    @Override
    public void render(Rect area, Cells cells) {
        Rect line = area.withoutLeft(Labelled.TEXT);
        cells.put(line.column(), line.row(), Days.column(event.day().likely()), Style.INK);
        String said = Columns.fit(new Entries(journal).say(event.what()), line.columns() - DAY - 1);
        cells.put(line.column() + DAY, line.row(), said, Style.INK);
    }
}
