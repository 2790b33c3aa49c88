// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import sillbook.text.Columns;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;

/** The first three lines: the pages, the day, the season. */
record Masthead(State state) implements Widget {
    private static final String NAME = "Sillbook";
    private static final int APART = 3;

    @Override
    public void render(Rect area, Cells cells) {
        drawPages(area.line(0), cells);
    }

    private void drawPages(Rect line, Cells cells) {
        int column = cells.put(line.column() + 1, line.row(), NAME, Style.INK) + 2;
        for (PageName page : state.layers().pages().keySet()) {
            boolean isOpen = page == state.layers().open();
            column = cells.put(column, line.row(), page.digit() + " ", Style.INK);
            column = cells.put(column, line.row(), page.title(isOpen), isOpen ? Style.BOLD : Style.INK) + APART;
        }
        String file = state.copy().file();
        int room = line.right() - 1 - column;
        if (Width.of(file) <= room) {
            cells.put(column, line.row(), Columns.right(file, room), Style.INK);
        }
    }
}
