// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.steps;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import sillbook.text.Columns;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Listing;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.Clock24;
import sillbook.ui.screen.TakenStep;
import sillbook.words.Days;

/** One step in the list: when it was done, what it was; bold when it is meant. */
record StepLine(List<TakenStep> steps, int last, LocalDate today) implements Listing.Row {
    static final int TIME = 4;
    private static final int NAME = 22;

    @Override
    public void render(int index, Rect line, Cells cells) {
        TakenStep step = steps.get(index);
        Style style = index <= last ? Style.BOLD : Style.INK;
        cells.put(line.column() + TIME, line.row(), when(step.at()), style);
        Rect rest = line.withoutLeft(NAME);
        cells.put(rest.column(), line.row(), Columns.fit(step.name(), rest.columns() - 1), style);
    }

    private String when(LocalDateTime at) {
        String day = at.toLocalDate().equals(today) ? "today" : Days.column(at.toLocalDate());
        return day + " " + Clock24.say(at.toLocalTime());
    }
}
