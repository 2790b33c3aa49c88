// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import java.util.List;
import sillbook.season.PlaceNow;
import sillbook.season.PotLine;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.State;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.pot.PotRow;
import sillbook.words.Counts;

/**
 * What stands at a place, a line each under the ruler; when there is no room for all, how many more there are.
 *
 * @param remark beside the name of the place; where there is none, how many stand there
 */
record PlacePots(State state, PlaceNow now, String remark) implements Widget {
    /** Heading and three pots: with less it is not worth beginning. */
    static final int FEWEST_ROWS = 4;

    static final String NOTHING = "Nothing stands here.";

    @Override
    public void render(Rect area, Cells cells) {
        heading(area.line(0), cells);
        Rect room = area.withoutTop(1);
        List<PotLine> lines = state.almanac().linesAt(now.place().id());
        int shown = lines.size() <= room.rows() ? lines.size() : Math.max(0, room.rows() - 1);
        for (int i = 0; i < shown; i++) {
            new PotRow(state, lines.get(i)).render(room.line(i), cells);
        }
        String rest = lines.isEmpty() ? NOTHING : "and " + Counts.of(lines.size() - shown, "line") + " more";
        if (shown < lines.size() || lines.isEmpty()) {
            cells.put(room.column() + Row.LABEL, room.row() + shown, rest, Style.INK);
        }
    }

    private void heading(Rect line, Cells cells) {
        int after = cells.put(line.column() + 1, line.row(), now.place().name(), Style.BOLD);
        String pots = now.pots().isEmpty() ? "" : Counts.of(now.pots().size(), "pot") + " under the months";
        String note = remark.isEmpty() ? pots : remark;
        cells.put(after + 2, line.row(), note, remark.isEmpty() ? Style.PENCIL : Style.INK);
    }
}
