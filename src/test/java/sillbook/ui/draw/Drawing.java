// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

/** A widget drawn alone on a page of its own, for tests to look at. */
final class Drawing {
    private Drawing() {}

    static Cells of(Widget widget, int columns, int rows) {
        return of(widget, columns, rows, Alphabet.UNICODE);
    }

    static Cells of(Widget widget, int columns, int rows, Alphabet alphabet) {
        Cells cells = Cells.blank(new Size(columns, rows), alphabet);
        widget.render(cells.area(), cells);
        return cells;
    }
}
