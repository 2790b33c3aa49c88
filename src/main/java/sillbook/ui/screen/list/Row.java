// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.list;

import java.util.Optional;
import sillbook.text.Columns;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.Thing;

/**
 * One line of a list.
 *
 * @param thing what the cursor stands on here; empty for a heading or a blank line
 * @param foundBy the words it is found by, one blank between them; empty for what is not looked for
 * @param mark the column in which the terminal's cursor stands: the first letter of the label
 */
public record Row(Optional<Thing> thing, String foundBy, int mark, Widget drawing) {
    /** Where labels begin. */
    public static final int LABEL = 4;

    public static final Row BLANK = of((area, cells) -> {});

    public static Row of(Widget drawing) {
        return new Row(Optional.empty(), "", LABEL, drawing);
    }

    public static Row of(Thing thing, Widget drawing) {
        return new Row(Optional.of(thing), "", LABEL, drawing);
    }

    /** A text where labels stand, cut where the line ends. */
    public static Row text(String text, Style style) {
        return of((line, cells) ->
                cells.put(line.column() + LABEL, line.row(), Columns.fit(text, line.columns() - LABEL - 1), style));
    }

    /** A heading, in column 2. */
    public static Row heading(String text) {
        return of((area, cells) -> {
            Rect line = area.withoutLeft(1);
            cells.put(line.column(), line.row(), text, Style.BOLD);
        });
    }

    /** A heading with a remark in pencil further on. */
    public static Row heading(String text, int column, String remark) {
        return of((area, cells) -> {
            cells.put(area.column() + 1, area.row(), text, Style.BOLD);
            cells.put(area.column() + column, area.row(), remark, Style.PENCIL);
        });
    }

    /** The same, with that thing for the cursor to stand on. */
    public Row on(Thing other) {
        return new Row(Optional.of(other), foundBy, mark, drawing);
    }

    public Row withMark(int column) {
        return new Row(thing, foundBy, column, drawing);
    }

    /** The same, found by these words. */
    public Row foundBy(String... words) {
        return new Row(thing, String.join(" ", words), mark, drawing);
    }
}
