// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import java.util.List;
import sillbook.text.Columns;

/** Running text, broken at spaces to the width it is given; what does not fit below is left out. */
public record Paragraph(String text, Style style) implements Widget {
    /** How many lines it takes at this width. */
    public int rows(int columns) {
        return Columns.wrap(text, columns).size();
    }

    @Override
    public void render(Rect area, Cells cells) {
        if (area.isEmpty()) {
            return;
        }
        List<String> lines = Columns.wrap(text, area.columns());
        for (int i = 0; i < Math.min(lines.size(), area.rows()); i++) {
            cells.put(area.column(), area.row() + i, Columns.head(lines.get(i), area.columns()), style);
        }
    }
}
