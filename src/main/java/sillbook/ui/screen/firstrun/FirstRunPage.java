// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.firstrun;

import java.util.List;
import java.util.stream.IntStream;
import sillbook.chart.RulerLayout;
import sillbook.chart.Sill;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Listing;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.RulerHead;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.State;
import sillbook.words.Days;

/** How the first picture is drawn. One flower stands on the empty sill. */
record FirstRunPage(FirstRun firstRun, State state) implements Widget {
    static final int FIRST_WAY = 8;
    static final int WAYS = 8;
    private static final int INDENT = 8;
    private static final int REMARKS = 29;
    private static final int WEEKS_TO_FLOWER = 6;
    private static final int CAUTION = FIRST_WAY + 9;

    @Override
    public void render(Rect area, Cells cells) {
        cells.put(area.column() + 1, area.row(), "Sillbook", Style.BOLD);
        renderRuler(area.withoutTop(1), cells);
        Rect text = area.withoutLeft(INDENT);
        write(
                text.withoutTop(FIRST_WAY - 3),
                cells,
                "Good day. This is a book for bulbs brought to flower indoors.",
                "It has no pages yet.");
        for (int i = 0; i < FirstRun.WAYS.size(); i++) {
            renderWay(FirstRun.WAYS.get(i), area.line(FIRST_WAY + i), cells);
        }
        write(
                text.withoutTop(FIRST_WAY + 4),
                cells,
                "Your journal will be one file, in your own folder:",
                firstRun.usualFile(),
                "Each action is kept at once. There is no save key, and every step",
                "can be taken back. Nothing leaves this computer.",
                "",
                "  Bulbs look like onions and are poisonous to people and pets.",
                "  Keep them apart from food, and label them.");
        cells.put(text.column(), area.row() + CAUTION, Sign.CAUTION, Style.RUST);
    }

    private void renderRuler(Rect area, Cells cells) {
        RulerLayout ruler = state.timescale().ruler(state, area.columns());
        int flower = ruler.todayCell().orElse(0) + WEEKS_TO_FLOWER * ruler.cellsAWeek();
        Sill sill = new Sill(IntStream.range(0, ruler.cells())
                .mapToObj(cell -> cell == flower ? Sill.Cell.FLOWER_FORETOLD : Sill.Cell.EMPTY)
                .toList());
        new RulerHead(Days.full(state.shown().today()), "", ruler, sill).render(area, cells);
    }

    private static void write(Rect area, Cells cells, String... lines) {
        for (int i = 0; i < lines.length; i++) {
            cells.put(area.column(), area.row() + i, List.of(lines).get(i), Style.INK);
        }
    }

    private void renderWay(Way way, Rect line, Cells cells) {
        cells.put(line.column() + WAYS, line.row(), way.words(), Style.INK);
        cells.put(line.column() + REMARKS, line.row(), way.remark(), Style.INK);
        if (way == firstRun.chosen()) {
            Listing.mark(line.withoutLeft(WAYS - 2), cells);
        }
    }
}
