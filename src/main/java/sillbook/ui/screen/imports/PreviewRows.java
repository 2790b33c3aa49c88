// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.imports;

import java.util.ArrayList;
import java.util.List;
import sillbook.text.Columns;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
import sillbook.words.Counts;
import sillbook.words.list.ListReading;
import sillbook.words.list.Outcome;

/** The lines of a list that is to be imported: what it is, then its rows. */
record PreviewRows(String file, ListReading reading) {
    private static final int NUMBER_END = 7;
    private static final int OUTCOME = 9;
    private static final int WHAT = 18;

    /**
     * A line on which the cursor can stand: a row, or of one that is wrong a cell.
     *
     * @param row its number
     */
    record Line(int row, Outcome outcome, String says) {}

    List<Line> lines() {
        return reading.rows().stream()
                .flatMap(row -> row.lines().stream().map(says -> new Line(row.number(), row.outcome(), says)))
                .toList();
    }

    Rows rows() {
        List<Row> rows = new ArrayList<>();
        rows.add(Row.heading("List of " + reading.sort().word() + " in " + file));
        if (!reading.leftOut().isEmpty()) {
            rows.add(remark("left out: " + Counts.and(reading.leftOut())));
        }
        lines().forEach(line -> rows.add(row(line)));
        return Rows.of(rows);
    }

    private static Row remark(String says) {
        return Row.of((area, cells) ->
                cells.put(area.column() + 1, area.row(), Columns.fit(says, area.columns() - 2), Style.PENCIL));
    }

    private static Row row(Line of) {
        Thing thing = new Thing.Named("row " + of.row() + " " + of.says());
        return Row.of(thing, (line, cells) -> draw(of, line, cells)).withMark(OUTCOME);
    }

    private static void draw(Line of, Rect line, Cells cells) {
        String number = Integer.toString(of.row());
        Style style = style(of.outcome());
        cells.put(line.column() + NUMBER_END - Width.of(number), line.row(), number, style);
        cells.put(line.column() + OUTCOME, line.row(), of.outcome().word(), style);
        cells.put(line.column() + WHAT, line.row(), Columns.fit(of.says(), line.columns() - WHAT - 1), style);
    }

    /** What is passed over stands back; what is wrong stands out. */
    private static Style style(Outcome outcome) {
        return switch (outcome) {
            case SAME -> Style.PENCIL;
            case WRONG -> Style.RUST;
            case NEW, CHANGED -> Style.INK;
        };
    }
}
