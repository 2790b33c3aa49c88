// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import sillbook.chart.MonthName;
import sillbook.chart.RulerLayout;
import sillbook.chart.RulerLayout.TodayLies;
import sillbook.chart.Sill;
import sillbook.text.Columns;

/**
 * The two lines over every page: the date with the months, the season with the sill and what flowers on it.
 *
 * @param date at the left of the months
 * @param season at the left of the sill, which then begins after it; may be empty
 */
public record RulerHead(String date, String season, RulerLayout ruler, Sill sill) implements Widget {
    @Override
    public void render(Rect area, Cells cells) {
        Rect months = area.line(0);
        Rect line = area.line(1);
        renderMonths(months, cells.within(months));
        renderSill(line, cells.within(line));
    }

    private void renderMonths(Rect line, Cells cells) {
        cells.put(line.column() + 1, line.row(), Columns.fit(date, ruler.leftColumns() - 3), Style.INK);
        for (MonthName name : MonthName.of(ruler)) {
            cells.put(line.column() + name.column(), line.row(), name.text(), Style.PENCIL);
        }
        ruler.foldColumn().ifPresent(column -> cells.put(line.column() + column, line.row(), Sign.TODAY, Style.BOLD));
        if (ruler.todayLies() != TodayLies.HERE) {
            boolean left = ruler.todayLies() == TodayLies.LEFT;
            Sign sign = left ? Sign.TODAY_LIES_LEFT : Sign.TODAY_LIES_RIGHT;
            cells.put(line.column() + ruler.leftColumns() - 2, line.row(), sign, Style.BOLD);
        }
    }

    private void renderSill(Rect line, Cells cells) {
        cells.fill(line, Sign.SILL, Style.PENCIL);
        if (!season.isEmpty()) {
            cells.put(line.column(), line.row(), " " + Columns.fit(season, ruler.leftColumns() - 2) + " ", Style.INK);
        }
        for (int cell = 0; cell < sill.cells().size(); cell++) {
            int column = line.column() + ruler.column(cell);
            switch (sill.cells().get(cell)) {
                case FLOWER ->
                    cells.put(
                            column, line.row(), Sign.BLOOM, Style.of(Role.PETAL).withBold());
                case FLOWER_FORETOLD -> cells.put(column, line.row(), Sign.BLOOM_FORETOLD, Style.of(Role.PETAL));
                case EMPTY -> {}
            }
        }
        ruler.foldColumn().ifPresent(column -> cells.put(line.column() + column, line.row(), Sign.FOLD, Style.PENCIL));
    }
}
