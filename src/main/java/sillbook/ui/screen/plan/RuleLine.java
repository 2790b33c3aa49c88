// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.util.List;
import java.util.Optional;
import sillbook.model.SeasonPlan.Rule;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Field;
import sillbook.ui.draw.FieldBox;
import sillbook.ui.draw.Point;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;

/**
 * The hand rule on a line: so many pots every so many days, from a day to a day.
 *
 * @param typed its fields while they are typed in
 */
record RuleLine(Rule rule, Optional<RuleTyped> typed) implements Widget {
    private static final List<String> BEFORE = List.of("Bring in ", " pots every ", " days, from ", " to ");
    private static final List<Integer> COLUMNS = List.of(5, 5, 12, 12);

    private List<Field> fields() {
        return typed.orElseGet(() -> RuleTyped.of(rule)).fields();
    }

    @Override
    public void render(Rect line, Cells cells) {
        for (int field = 0; field < BEFORE.size(); field++) {
            Style style = field == 0 ? Style.BOLD : Style.INK;
            cells.put(
                    line.column() + column(field) - Width.of(BEFORE.get(field)), line.row(), BEFORE.get(field), style);
            new FieldBox(fields().get(field)).render(line.columns(column(field), COLUMNS.get(field)), cells);
        }
    }

    private static int column(int field) {
        int before = field == 0 ? 1 : column(field - 1) + COLUMNS.get(field - 1);
        return before + Width.of(BEFORE.get(field));
    }

    /** Where the terminal's cursor stands while it is typed in. */
    Optional<Point> cursor() {
        return typed.map(fields -> new FieldBox(fields.fields().get(fields.at()))
                .cursor(new Rect(column(fields.at()), 0, COLUMNS.get(fields.at()), 1)));
    }
}
