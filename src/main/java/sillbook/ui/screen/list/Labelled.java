// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.list;

import java.util.ArrayList;
import java.util.List;
import sillbook.text.Columns;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.Thing;

/** A text beside a bold label, on as many lines as it needs. */
public record Labelled(String label, String text) {
    /** Where the text begins. */
    public static final int TEXT = 8;

    /** The lines at that width; none where there is no text. */
    public static List<Row> ifSaid(String label, String text, int columns) {
        return text.isEmpty() ? List.of() : new Labelled(label, text).rows(columns);
    }

    /** Several texts one under another, the label before the first. */
    public static List<Row> each(String label, List<String> texts, int columns) {
        List<Row> rows = new ArrayList<>();
        for (String text : texts) {
            rows.addAll(new Labelled(rows.isEmpty() ? label : "", text).rows(columns));
        }
        return rows;
    }

    /** The lines at that width. */
    public List<Row> rows(int columns) {
        List<Row> rows = new ArrayList<>();
        String shown = label;
        for (String part : Columns.wrap(text, columns - TEXT - 1)) {
            rows.add(row(shown, part));
            shown = "";
        }
        return rows;
    }

    /** The same lines, the cursor standing on that thing at the first. */
    public List<Row> rows(Thing thing, int columns) {
        List<Row> rows = new ArrayList<>(rows(columns));
        rows.set(0, Row.of(thing, rows.get(0).drawing()).withMark(TEXT));
        return rows;
    }

    private static Row row(String label, String part) {
        return Row.of((area, cells) -> {
            cells.put(area.column() + 1, area.row(), label, Style.BOLD);
            cells.put(area.column() + TEXT, area.row(), part, Style.INK);
        });
    }
}
