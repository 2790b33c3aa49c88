// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import sillbook.chart.PotDrawing;
import sillbook.chart.PotDrawing.Middle;
import sillbook.text.Width;

/** A pot and its bulbs from above, to scale, the bulbs numbered; in plain letters only where they sit. */
public record PotFromAbove(PotDrawing pot) implements Widget {
    /** A cell is about twice as high as wide. */
    private static final int WIDE_FOR_HIGH = 2;

    /** Columns that so many rows take. */
    public static int columns(int rows) {
        return rows * WIDE_FOR_HIGH;
    }

    @Override
    public void render(Rect area, Cells cells) {
        int rows = Math.min(area.rows(), area.columns() / WIDE_FOR_HIGH);
        if (rows < 1) {
            return;
        }
        Rect square = new Rect(area.column(), area.row(), columns(rows), rows);
        if (cells.alphabet() == Alphabet.ASCII) {
            ring(square, cells);
        } else {
            dots(square, cells);
        }
        for (int number = 0; number < pot.bulbs().size(); number++) {
            number(number, square, cells);
        }
    }

    private void dots(Rect square, Cells cells) {
        Dots rim = new Dots(square.columns(), square.rows());
        double scale = (rim.height() - 1) / pot.across();
        rim.circle(middle(rim), pot.across() / 2 * scale);
        for (Middle bulb : pot.bulbs()) {
            Middle at = middle(rim);
            rim.circle(new Middle(at.x() + bulb.x() * scale, at.y() - bulb.y() * scale), pot.bulb() / 2 * scale);
        }
        rim.render(square, cells, Style.INK);
    }

    private static Middle middle(Dots dots) {
        return new Middle(dots.width() / 2.0, dots.height() / 2.0);
    }

    private void ring(Rect square, Cells cells) {
        int steps = 16 * square.rows();
        for (int step = 0; step < steps; step++) {
            double turn = 2 * Math.PI * step / steps;
            int column = (int) Math.floor(square.columns() / 2.0 * (1 + 0.999 * Math.sin(turn)));
            int row = (int) Math.floor(square.rows() / 2.0 * (1 + 0.999 * Math.cos(turn)));
            cells.put(square.column() + column, square.row() + row, ".", Style.INK);
        }
    }

    private void number(int number, Rect square, Cells cells) {
        Middle bulb = pot.bulbs().get(number);
        String said = String.valueOf(number + 1);
        String shown = cells.alphabet() == Alphabet.ASCII ? "(" + said + ")" : said;
        double scale = square.rows() / pot.across();
        int row = square.row() + (int) Math.floor(square.rows() / 2.0 - bulb.y() * scale);
        double middle = square.columns() / 2.0 + WIDE_FOR_HIGH * bulb.x() * scale;
        int column = square.column() + (int) Math.floor(middle - Width.of(shown) / 2.0);
        cells.put(column, row, shown, Style.BOLD);
    }
}
