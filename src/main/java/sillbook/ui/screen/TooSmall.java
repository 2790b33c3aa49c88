// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.util.List;
import sillbook.text.Columns;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;

/**
 * What stands in a window too small for a page: as much of the sentence as fits, never nothing.
 *
 * @param keys the last line
 */
record TooSmall(String keys) implements Widget {
    private static final int CALM_COLUMNS = 52;
    private static final int CALM_ROWS = 7;
    private static final int SHORT_ROWS = 3;
    private static final int SHORT_COLUMNS = 21;

    @Override
    public void render(Rect area, Cells cells) {
        List<String> lines = lines(area.size());
        boolean calm = lines.size() == CALM_ROWS;
        Rect text = calm ? area.withoutLeft(3).withoutTop((area.rows() - CALM_ROWS) / 2) : area;
        for (int i = 0; i < Math.min(lines.size(), text.rows()); i++) {
            cells.put(text.column(), text.row() + i, Columns.head(lines.get(i), text.columns()), Style.INK);
        }
    }

    private List<String> lines(Size size) {
        Size least = Window.SMALLEST;
        if (size.columns() >= CALM_COLUMNS && size.rows() >= CALM_ROWS + 2) {
            return List.of(
                    "Sillbook wants a little more room:",
                    least.columns() + " columns by " + least.rows() + " lines; this is " + size.columns() + " by "
                            + size.rows() + ".",
                    "",
                    "Make the window larger, or the letters smaller.",
                    "Nothing is lost; half-typed text is kept.",
                    "",
                    keys);
        }
        if (size.columns() >= SHORT_COLUMNS && size.rows() >= SHORT_ROWS) {
            return List.of("Sillbook needs " + least + ";", "this is " + size + ".", "", keys);
        }
        return List.of(least.toString());
    }
}
