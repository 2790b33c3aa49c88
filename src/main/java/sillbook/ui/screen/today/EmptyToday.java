// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.today;

import java.util.ArrayList;
import java.util.List;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.State;
import sillbook.ui.screen.list.Row;

/** Today before there is a pot: what will stand here, and the keys that make it so. */
record EmptyToday(State state) {
    private static final int INDENT = 8;
    private static final int BLANK_LINES = 4;

    List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < BLANK_LINES; i++) {
            rows.add(Row.BLANK);
        }
        rows.add(text("Nothing is due: there are no pots yet."));
        rows.add(Row.BLANK);
        rows.add(text("Here stands each day what is late, what is ready and may wait, what"));
        rows.add(text("to move, where to look, and what comes in the next two weeks."));
        rows.add(Row.BLANK);
        rows.add(key("N", "pots up your first; it wants a variety, a number, a day."));
        rows.add(key("L", "takes it as a line:  6 x Marrow Lane x5, 19 cm, fridge, 14 oct"));
        return rows;
    }

    private static Row text(String text) {
        return Row.of((area, cells) -> cells.put(area.column() + INDENT, area.row(), text, Style.INK));
    }

    private static Row key(String key, String does) {
        return Row.of((area, cells) -> {
            cells.put(area.column() + INDENT, area.row(), key, Style.BOLD);
            cells.put(area.column() + INDENT + 3, area.row(), does, Style.INK);
        });
    }
}
