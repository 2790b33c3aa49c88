// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.card;

import java.util.List;
import sillbook.season.ColdBar;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Role;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.list.Row;

/** A pot's cold as a bar: read in ink, assumed in dots, blank to come, and a stroke where it is enough. */
record ColdBarRow(ColdBar bar) {
    private static final int TEXT = 8;
    private static final String SCALE = "half a week a cell";

    Row row() {
        return Row.of(this::render);
    }

    private void render(Rect area, Cells cells) {
        int start = area.column() + TEXT;
        int room = area.columns() - TEXT - Width.of(SCALE) - 5;
        List<Boolean> had = bar.wasRead();
        for (int cell = 0; cell < Math.min(had.size(), room); cell++) {
            Sign sign = had.get(cell) ? Sign.BAR : Sign.BAR_ASSUMED;
            cells.put(column(start, cell), area.row(), sign, Style.of(Role.FROST));
        }
        cells.put(start + bar.need(), area.row(), Sign.NEED, Style.INK);
        int end = column(start, Math.max(bar.need(), Math.min(had.size(), room)));
        cells.put(end + 2, area.row(), SCALE, Style.PENCIL);
    }

    /** What is had beyond the need stands after its stroke. */
    private int column(int start, int cell) {
        return start + cell + (cell < bar.need() ? 0 : 1);
    }
}
