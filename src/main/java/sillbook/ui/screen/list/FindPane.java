// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.list;

import java.util.List;
import java.util.Optional;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Point;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.Layer.Cause;
import sillbook.ui.screen.Thing;

/**
 * A list in which one can find: the field when it is open, the heads of the columns, what is found.
 *
 * @param all the list before anything is looked for
 * @param heads lines that stay over the list: the heads of the columns, or what it is a list of
 */
public record FindPane(Find find, Rows all, Cursor cursor, List<Widget> heads) implements Widget {
    public FindPane {
        heads = List.copyOf(heads);
    }

    /** A list without heads. */
    public static FindPane of(Find find, Rows all, Cursor cursor) {
        return new FindPane(find, all, cursor, List.of());
    }

    /** The lines found; all where nothing is looked for. */
    public Rows rows() {
        return find.in(all);
    }

    private ListPane pane() {
        return new ListPane(rows(), cursor);
    }

    private int headRows() {
        return find.headRows() + heads.size();
    }

    /** How many of so many rows are the list's. */
    public int listRows(int rows) {
        return Math.max(0, rows - headRows());
    }

    @Override
    public void render(Rect area, Cells cells) {
        find.render(area.line(0), find.count(rows(), all), cells);
        for (int i = 0; i < heads.size(); i++) {
            heads.get(i).render(area.line(find.headRows() + i), cells);
        }
        Rect list = area.withoutTop(headRows());
        pane().render(list, cells.within(list));
    }

    /** The cursor after one of the keys that move it, in so many rows. */
    public Cursor pressed(Key key, int rows) {
        return cursor.pressed(key, rows(), listRows(rows));
    }

    /** The cursor on that thing, in so many rows; where it was if it is not there. */
    public Cursor to(Thing thing, int rows) {
        return cursor.to(thing, rows(), listRows(rows));
    }

    /** The cursor of the list before, in this one that came of it. */
    public Cursor settled(FindPane before, Cause cause, int rows) {
        return cursor.settled(before.rows(), rows(), cause, listRows(rows));
    }

    /** Where the terminal's cursor stands in so many rows. */
    public Optional<Point> point(int rows) {
        return find.cursor()
                .or(() -> pane().point(listRows(rows)).map(at -> new Point(at.column(), at.row() + headRows())));
    }

    /** Which of the things are in sight. */
    public String place(int rows) {
        return pane().place(listRows(rows));
    }
}
