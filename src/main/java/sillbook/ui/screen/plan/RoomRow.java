// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.util.Optional;
import java.util.stream.IntStream;
import sillbook.chart.Days;
import sillbook.chart.RulerLayout;
import sillbook.plan.RoomTaken;
import sillbook.text.Columns;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Right;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;

/** How full a place is under the months: a third, two thirds, more, full; over it is too many. */
record RoomRow(RulerLayout ruler, RoomTaken taken) implements Widget {
    private static final int NAME = 8;
    private static final int NAME_COLUMNS = 13;
    private static final int ROOM_END = 24;
    private static final int THIRDS = 3;

    @Override
    public void render(Rect line, Cells cells) {
        String name = taken.berth().place().name();
        cells.put(line.column() + NAME, line.row(), Columns.fit(name, NAME_COLUMNS), Style.INK);
        new Right(line, cells)
                .put(
                        ROOM_END,
                        taken.berth().room().map(room -> Integer.toString(room)).orElse("?"),
                        Style.INK);
        Cells drawn = cells.within(line);
        for (int cell = 0; cell < ruler.cells(); cell++) {
            int column = line.column() + ruler.column(cell);
            sign(most(ruler.days(cell)))
                    .ifPresent(sign -> drawn.put(column, line.row(), sign, sign == Sign.LATE ? Style.RUST : Style.INK));
        }
    }

    private int most(Days days) {
        return IntStream.range(0, taken.pots().size())
                .filter(day -> days.contains(taken.days().start().plusDays(day)))
                .map(taken.pots()::get)
                .max()
                .orElse(0);
    }

    /** Where nobody knows the room, that something stands there. */
    private Optional<Sign> sign(int pots) {
        if (pots == 0) {
            return Optional.empty();
        }
        int room = taken.berth().room().orElse(Integer.MAX_VALUE);
        if (pots >= room) {
            return Optional.of(pots > room ? Sign.LATE : Sign.FULL);
        }
        long thirds = (long) pots * THIRDS;
        boolean isLittle = thirds <= room;
        return Optional.of(isLittle ? Sign.THIRD_FULL : thirds <= 2L * room ? Sign.TWO_THIRDS_FULL : Sign.NEARLY_FULL);
    }
}
