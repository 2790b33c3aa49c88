// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.util.List;
import java.util.stream.Stream;
import sillbook.chart.RulerLayout;
import sillbook.chart.Sill;
import sillbook.text.Columns;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.RulerHead;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.words.Days;

/** The first three lines: the pages, the day with the months, the season with the sill. */
record Masthead(State state) implements Widget {
    private static final String NAME = "Sillbook";
    private static final int APART = 3;

    @Override
    public void render(Rect area, Cells cells) {
        drawPages(area.line(0), cells);
        RulerLayout ruler = timescale().ruler(state, area.columns());
        String date = Days.full(state.shown().today());
        new RulerHead(date, season(), ruler, sill(ruler)).render(area.withoutTop(1), cells);
    }

    private Timescale timescale() {
        return state.layers().page().timescale(state);
    }

    private Sill sill(RulerLayout ruler) {
        var flowering = state.layers().page().sill(state);
        return Sill.of(
                ruler,
                Stream.of(flowering.happened(), flowering.foretold())
                        .flatMap(List::stream)
                        .map(Charted::days)
                        .toList());
    }

    private void drawPages(Rect line, Cells cells) {
        int column = cells.put(line.column() + 1, line.row(), NAME, Style.INK) + 2;
        for (PageName page : state.layers().pages().keySet()) {
            boolean isOpen = page == state.layers().open();
            Style style = isOpen ? Style.BOLD : Style.INK;
            column = cells.put(column, line.row(), page.digit() + " ", Style.INK);
            column = cells.put(column, line.row(), page.title(isOpen), style) + APART;
        }
        String file = state.copy().file();
        int room = line.right() - 1 - column;
        if (Width.of(file) <= room) {
            cells.put(column, line.row(), Columns.right(file, room), Style.INK);
        }
    }

    private String season() {
        String name = state.journal().nameOf(timescale().season());
        String copy = state.copy().words();
        return "season " + name + (copy.isEmpty() ? "" : " " + copy);
    }
}
