// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

/**
 * A list of one-line entries with a cursor.
 *
 * @param count how many entries there are
 * @param cursor the entry under the cursor; -1 for none
 * @param row draws one entry; column 0 is the cursor's and is drawn by the list
 */
public record Listing(int count, int cursor, Scroll scroll, Row row) implements Widget {
    /** Draws one entry into its line. */
    @FunctionalInterface
    public interface Row {
        void render(int index, Rect line, Cells cells);
    }

    @Override
    public void render(Rect area, Cells cells) {
        int after = Math.min(count, scroll.first() + area.rows());
        for (int index = scroll.first(); index < after; index++) {
            Rect line = area.line(index - scroll.first());
            row.render(index, line, cells.within(line));
            if (index == cursor) {
                mark(line, cells);
            }
        }
    }

    /** The cursor's line: its sign, ink as bold, and a faint ground as wide as the list. */
    public static void mark(Rect line, Cells cells) {
        if (line.isEmpty()) {
            return;
        }
        cells.put(line.column(), line.row(), Sign.CURSOR, Style.BOLD);
        cells.restyle(line, style -> (style.role() == Role.INK ? style.withBold() : style).withWash());
    }
}
