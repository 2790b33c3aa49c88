// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import sillbook.text.Columns;
import sillbook.text.Width;

/**
 * The line across the page: over the foot, and on top of a slip.
 *
 * @param title bold near its left end, or empty
 * @param right near its right end (order, place in the list), or empty
 */
public record Rule(String title, String right) implements Widget {
    public static final Rule PLAIN = new Rule("", "");
    /** Of rule and space before the title and after what stands at the right. */
    private static final int MARGIN = 3;

    public Rule withTitle(String text) {
        return new Rule(text, right);
    }

    public Rule withRight(String text) {
        return new Rule(title, text);
    }

    @Override
    public void render(Rect area, Cells cells) {
        Rect line = area.line(0);
        cells.fill(line, Sign.SILL, Style.PENCIL);
        renderTexts(area, cells);
    }

    /** What stands on the line, without the line. */
    public void renderTexts(Rect area, Cells cells) {
        Rect line = area.line(0);
        int room = line.columns() - 2 * MARGIN;
        if (line.isEmpty() || room <= 0) {
            return;
        }
        if (!title.isEmpty()) {
            lay(Columns.fit(title, room), line.column() + MARGIN, Style.BOLD, line, cells);
        }
        if (!right.isEmpty()) {
            String text = Columns.fit(right, room);
            int column = line.right() - MARGIN - Width.of(text);
            lay(text, column, Style.INK, line, cells);
        }
    }

    private static void lay(String text, int column, Style style, Rect line, Cells cells) {
        cells.put(column - 1, line.row(), " ", Style.INK);
        int after = cells.put(column, line.row(), text, style);
        cells.put(after, line.row(), " ", Style.INK);
    }
}
