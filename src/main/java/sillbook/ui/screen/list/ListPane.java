// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.list;

import java.util.List;
import java.util.Optional;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Listing;
import sillbook.ui.draw.Point;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Widget;

/** A list as it is drawn: what scrolls above, what is pinned at the end of it. */
public record ListPane(Rows rows, Cursor cursor) implements Widget {

    /** How many lines are left for what scrolls. */
    static int scrolledHeight(Rows rows, int height) {
        return Math.max(
                0, Math.min(rows.scrolled().size(), height - rows.pinned().size()));
    }

    @Override
    public void render(Rect area, Cells cells) {
        int cursorLine = rows.lineOf(cursor.at()).orElse(-1);
        int room = scrolledHeight(rows, area.rows());
        int first = first(area.rows());
        draw(rows.scrolled().subList(first, first + room), cursorLine - first, area, cells);
        Rect below = area.withoutTop(room);
        draw(rows.pinned(), cursorLine - rows.scrolled().size(), below, cells);
    }

    private static void draw(List<Row> rows, int cursorLine, Rect area, Cells cells) {
        for (int i = 0; i < Math.min(rows.size(), area.rows()); i++) {
            Rect line = area.line(i);
            rows.get(i).drawing().render(line, cells.within(line));
            if (i == cursorLine) {
                Listing.mark(line, cells);
            }
        }
    }

    private int first(int height) {
        return cursor.first(rows, height);
    }

    /** Where the terminal's cursor stands; nowhere in an empty list, or where its line is scrolled out of sight. */
    public Optional<Point> point(int height) {
        int scrolled = rows.scrolled().size();
        int room = scrolledHeight(rows, height);
        int first = first(height);
        return rows.lineOf(cursor.at())
                .filter(line -> line >= scrolled || (line >= first && line < first + room))
                .map(line -> new Point(row(line).mark(), line >= scrolled ? room + line - scrolled : line - first));
    }

    private Row row(int line) {
        int scrolled = rows.scrolled().size();
        return line < scrolled ? rows.scrolled().get(line) : rows.pinned().get(line - scrolled);
    }

    /** Which of the things that scroll are in sight: {@code 1-10 of 16}. */
    public String place(int height) {
        int all = rows.scrolledThings();
        if (all == 0) {
            return "none of 0";
        }
        int first = first(height);
        int from = rows.thingsBefore(first) + 1;
        int to = Math.max(1, Math.min(all, rows.thingsBefore(first + scrolledHeight(rows, height))));
        return (from >= to ? Integer.toString(to) : from + "-" + to) + " of " + all;
    }
}
