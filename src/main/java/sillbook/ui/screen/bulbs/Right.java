// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.bulbs;

import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;

/** Text that ends before a column of a line. */
record Right(Rect line, Cells cells) {
    void put(int endExclusive, String text, Style style) {
        cells.put(line.column() + endExclusive - Width.of(text), line.row(), text, style);
    }
}
