// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.today;

import sillbook.text.Columns;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;

/**
 * One job in its columns.
 *
 * @param isPicked whether its pots are picked
 * @param label bold
 * @param what what there is to do
 * @param where to where, or where it stands
 * @param when by when, flush right
 */
record JobLine(
        Sign sign, Style signStyle, boolean isPicked, String label, String name, String what, String where, String when)
        implements Widget {
    private static final int PICK = 1;
    private static final int SIGN = 2;
    private static final int LABEL = 4;
    private static final int NAME = 8;
    private static final int WHAT = 29;
    private static final int WHERE = 52;
    private static final int END = 79;

    @Override
    public void render(Rect area, Cells cells) {
        if (isPicked) {
            cells.put(area.column() + PICK, area.row(), Sign.PICKED, Style.BOLD);
        }
        cells.put(area.column() + SIGN, area.row(), sign, signStyle);
        cells.put(area.column() + LABEL, area.row(), label, name.isEmpty() ? Style.INK : Style.BOLD);
        int afterLabel = LABEL + Width.of(label) + 1;
        put(Math.max(NAME, afterLabel), WHAT - 1, name, area, cells);
        int when = END - Width.of(this.when);
        put(WHAT, WHERE - 1, what, area, cells);
        put(WHERE, this.when.isEmpty() ? END : when - 1, where, area, cells);
        cells.put(area.column() + when, area.row(), this.when, sign == Sign.LATE ? Style.RUST : Style.INK);
    }

    private static void put(int column, int end, String text, Rect area, Cells cells) {
        cells.put(area.column() + column, area.row(), Columns.fit(text, end - column), Style.INK);
    }
}
