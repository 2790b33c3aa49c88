// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

/**
 * A sheet that rises from the foot over the lower part of the page, as tall as it needs; the page behind it stays, in pencil.
 *
 * @param rows its height, title rule included
 * @param content drawn under the title rule
 */
public record Slip(String title, int rows, Widget content) implements Widget {
    /** The part of the page's body that a slip of this height has for its content. */
    public static Rect inside(Rect body, int rows) {
        return sheet(body, rows).withoutTop(1);
    }

    @Override
    public void render(Rect area, Cells cells) {
        Rect sheet = sheet(area, rows);
        putBehind(area.withoutBottom(sheet.rows()), cells);
        cells.clear(sheet);
        Rule.PLAIN.withTitle(title).render(sheet, cells);
        Rect inside = inside(area, rows);
        content.render(inside, cells.within(inside));
    }

    private static Rect sheet(Rect body, int rows) {
        int height = Math.min(rows, body.rows());
        return body.lines(body.rows() - height, height);
    }

    /** Picks stay as they are: the slip is often about them. */
    private static void putBehind(Rect page, Cells cells) {
        cells.restyle(page, style -> Style.PENCIL);
        Rect picks = page.columns(1, 1).intersect(cells.area());
        for (int row = picks.row(); row < picks.bottom() && !picks.isEmpty(); row++) {
            if (cells.codePoint(picks.column(), row) == Sign.PICKED.in(cells.alphabet())) {
                cells.put(picks.column(), row, Sign.PICKED, Style.BOLD);
            }
        }
    }
}
