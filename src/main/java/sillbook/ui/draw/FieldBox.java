// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import sillbook.text.Safe;
import sillbook.text.Width;

/**
 * A field as on a paper form: typed text underlined, the rest a ruled line. Text longer than the box scrolls under the insertion
 * point; {@code ‹} and {@code ›} stand where an end is hidden.
 */
public record FieldBox(Field field) implements Widget {
    @Override
    public void render(Rect area, Cells cells) {
        Rect line = area.line(0);
        if (line.isEmpty()) {
            return;
        }
        cells.fill(line, Sign.FIELD_LINE, Style.PENCIL);
        int from = firstColumn(line.columns());
        int column = line.column() - from;
        for (String cluster : field.clusters()) {
            String shown = Safe.text(cluster);
            int after = column + Width.of(shown);
            if (column >= line.column() && after <= line.right()) {
                cells.put(column, line.row(), shown, Style.UNDERLINED);
            }
            column = after;
        }
        if (from > 0) {
            cells.put(line.column(), line.row(), Sign.HIDDEN_LEFT, Style.PENCIL);
        }
        if (column > line.right()) {
            cells.put(line.right() - 1, line.row(), Sign.HIDDEN_RIGHT, Style.PENCIL);
        }
    }

    /** Where the terminal's cursor stands when the field has it. */
    public Point cursor(Rect area) {
        return new Point(area.column() + Width.of(field.before()) - firstColumn(area.columns()), area.row());
    }

    /** How many columns of the text lie left of the box: as few as leave the insertion point, and a hidden end's sign, in it. */
    private int firstColumn(int columns) {
        int caret = Width.of(field.before());
        boolean atEnd = field.after().isEmpty();
        int lastForCaret = atEnd ? columns - 1 : columns - 2;
        return Math.max(0, caret - Math.max(0, lastForCaret));
    }
}
