// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.pots;

import java.util.List;
import java.util.stream.Stream;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.State;
import sillbook.ui.screen.list.Row;

/** What the page says of a season without pots: what belongs here, and the keys that make it. */
record NoPots(State state) {
    private static final int INDENT = 8;

    List<Row> rows() {
        return Stream.of(
                        "",
                        "",
                        "No pots in season "
                                + state.journal().nameOf(state.timescale().season()) + " yet.",
                        "",
                        "Here each pot is one line under the months: how warm it stands, week",
                        "by week, until it flowers.",
                        "",
                        "N  pots up your first; it wants a variety, a number, a day.",
                        "L  takes it as a line:  6 x Marrow Lane x5, 19 cm, fridge, 14 oct")
                .map(text -> Row.of((area, cells) -> cells.put(area.column() + INDENT, area.row(), text, Style.INK)))
                .toList();
    }
}
