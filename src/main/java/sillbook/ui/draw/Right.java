// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import sillbook.text.Width;

/** Text that ends before a column of a line. */
public record Right(Rect line, Cells cells) {
    public void put(int endExclusive, String text, Style style) {
        cells.put(line.column() + endExclusive - Width.of(text), line.row(), text, style);
    }
}
