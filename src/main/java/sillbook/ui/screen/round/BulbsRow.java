// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.round;

import sillbook.model.Pot.Way;
import sillbook.model.Purchase;
import sillbook.season.WaitingBulbs;
import sillbook.text.Columns;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Row;
import sillbook.words.Days;
import sillbook.words.PotNames;
import sillbook.words.Weeks;

/** Bulbs that wait dry, in a round: what is marked, when they were last felt, how long they were cold. */
record BulbsRow(State state, WaitingBulbs bulbs, Marks marks) implements Widget {

    Row row() {
        return Row.of(new Thing.OfPurchase(bulbs.purchase().id()), this);
    }

    @Override
    public void render(Rect area, Cells cells) {
        Purchase purchase = bulbs.purchase();
        int left = area.column();
        String name = "dry " + new PotNames(state.journal()).variety(purchase.variety()) + " x" + bulbs.bulbs();
        cells.put(left + Row.LABEL, area.row(), Columns.fit(name, RoundRow.FOUND - 1 - Row.LABEL), Style.INK);
        Found found = marks.of(purchase.id());
        String shown = found.isNothing() ? RoundRow.UNMARKED : found.shown(Way.DRAINED, Whose.unit(state));
        Style style = found.isNothing() ? Style.PENCIL : Style.BOLD;
        cells.put(left + RoundRow.FOUND, area.row(), Columns.fit(shown, RoundRow.LAST - 1 - RoundRow.FOUND), style);
        String felt = bulbs.felt()
                .map(day -> "felt " + Days.date(day))
                .orElse("came " + Days.date(purchase.day().likely()));
        cells.put(left + RoundRow.LAST, area.row(), felt, Style.INK);
        String weeks = bulbs.dry().days() == 0
                ? ""
                : "dry, " + Math.round(Weeks.ofDays(bulbs.dry().days()));
        cells.put(left + RoundRow.END - Width.of(weeks), area.row(), weeks, Style.INK);
    }
}
