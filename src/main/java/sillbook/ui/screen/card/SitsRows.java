// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.card;

import java.util.ArrayList;
import java.util.List;
import sillbook.model.Pot;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.screen.State;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.pot.PotPicture;

/** How the bulbs of a pot sit, as lines of its card; none where its width or their size is not known. */
final class SitsRows {
    private static final int LEFT = 8;

    private SitsRows() {}

    static List<Row> of(State state, Pot pot) {
        List<Row> rows = new ArrayList<>();
        state.almanac().sits(pot).flatMap(PotPicture::of).ifPresent(drawn -> {
            rows.add(Row.heading("Sits", LEFT, "from above and from the side"));
            for (int line = 0; line < PotPicture.ROWS; line++) {
                int number = line;
                rows.add(Row.of((area, cells) -> line(drawn, number, area, cells)));
            }
        });
        return rows;
    }

    /** One line of the picture: all of it, of which only that line is let through. */
    private static void line(PotPicture picture, int number, Rect area, Cells cells) {
        Rect whole = new Rect(area.column() + LEFT, area.row() - number, area.columns() - LEFT, PotPicture.ROWS);
        picture.render(whole, cells.within(area.line(0)));
    }
}
