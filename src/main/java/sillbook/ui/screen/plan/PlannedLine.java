// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import sillbook.chart.RulerLayout;
import sillbook.plan.PlanNow;
import sillbook.text.Columns;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.PotLineStroke;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.Charted;
import sillbook.ui.screen.State;
import sillbook.ui.screen.list.Row;
import sillbook.words.plan.PlanNames;

/**
 * A proposed pot as a line under the months.
 *
 * @param number of it in the plan, from 0
 */
record PlannedLine(State state, RulerLayout ruler, PlanNow now, int number) implements Widget {
    private static final int SIGN = 2;

    @Override
    public void render(Rect line, Cells cells) {
        if (!now.troublesOf(number).isEmpty()) {
            cells.put(line.column() + SIGN, line.row(), Sign.LATE, Style.RUST);
        }
        new PotLineStroke(
                        ruler,
                        Charted.line(
                                ruler,
                                now.pots()
                                        .get(number)
                                        .phases(now.ribbon().days().start())))
                .render(line, cells);
        PlanNames names = new PlanNames(state.journal(), now.plan());
        String mark = names.mark(number);
        cells.put(line.column() + Row.LABEL, line.row(), mark, Style.BOLD);
        int name = Row.LABEL + Width.of(mark) + 1;
        String fitted = Columns.fit(names.content(number), ruler.leftColumns() - name - 1);
        cells.put(line.column() + name, line.row(), fitted, Style.INK);
    }
}
