// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.bulbs;

import sillbook.model.Purchase;
import sillbook.text.Columns;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Right;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.list.Row;
import sillbook.words.Days;
import sillbook.words.Prices;
import sillbook.words.PurchaseWords;
import sillbook.words.Terms;

/**
 * A purchase in its columns.
 *
 * @param what the variety's name; on its card, what is told of the bulbs
 */
record PurchaseLine(Purchase purchase, String what) implements Widget {
    private static final int WHAT = 22;
    private static final int WHAT_COLUMNS = 18;
    private static final int BULBS_END = 46;
    private static final int PRICE_END = 57;
    private static final int STATE = 59;
    private static final int SUPPLIER = 68;

    /** Over the columns, in pencil. */
    static void heading(String what, Rect line, Cells cells) {
        Right right = new Right(line, cells);
        cells.put(line.column() + Row.LABEL, line.row(), "day", Style.PENCIL);
        cells.put(line.column() + WHAT, line.row(), what, Style.PENCIL);
        right.put(BULBS_END, "bulbs", Style.PENCIL);
        right.put(PRICE_END, "price", Style.PENCIL);
        cells.put(line.column() + STATE, line.row(), "state", Style.PENCIL);
        cells.put(line.column() + SUPPLIER, line.row(), "from", Style.PENCIL);
    }

    @Override
    public void render(Rect line, Cells cells) {
        Right right = new Right(line, cells);
        cells.put(line.column() + Row.LABEL, line.row(), Days.full(purchase.day()), Style.INK);
        cells.put(line.column() + WHAT, line.row(), Columns.fit(what, WHAT_COLUMNS), Style.BOLD);
        right.put(BULBS_END, PurchaseWords.came(purchase), Style.INK);
        right.put(PRICE_END, purchase.price().map(Prices::say).orElse("?"), Style.INK);
        cells.put(line.column() + STATE, line.row(), Terms.STATES.say(purchase.state()), Style.INK);
        Rect supplier = line.withoutLeft(SUPPLIER);
        String from = Columns.fit(purchase.supplier(), supplier.columns() - 1);
        cells.put(supplier.column(), supplier.row(), from, Style.INK);
    }
}
