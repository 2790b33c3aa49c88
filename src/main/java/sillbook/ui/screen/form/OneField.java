// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.form;

import java.util.Optional;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Field;
import sillbook.ui.draw.FieldBox;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;

/** A slip that asks one thing, in one field. */
public interface OneField extends Layer {
    /** Columns of a field that has what it reads as beside it. */
    int SHORT = 22;

    String title();

    /** Before the field, one word. */
    String label();

    Field field();

    /** The same slip with other words typed. */
    OneField with(Field typed);

    Aside aside(State state);

    /** What is typed reads as, shown beside a short field; empty for a field of the whole width. */
    default Optional<String> readsAs(State state) {
        return Optional.empty();
    }

    /** At the right of the line over the foot; empty where there is nothing to say. */
    default String place() {
        return "";
    }

    @Override
    default Reach reach() {
        return Reach.FIELD;
    }

    @Override
    default Look look(State state, Size body) {
        FieldBox box = new FieldBox(field());
        Rect whole = new Rect(Columns.FIELD, 1, body.columns() - Columns.FIELD - Columns.INDENT, 1);
        return Look.slip(title(), Columns.ROWS, (area, cells) -> render(box, state, area, cells))
                .withCursor(box.cursor(whole))
                .withPlace(place())
                .withAside(aside(state))
                .withFoot(Action.AGREE, Action.BACK, Action.KEYS);
    }

    private void render(FieldBox box, State state, Rect area, Cells cells) {
        cells.put(area.column() + Columns.INDENT, area.row() + 1, label(), Style.INK);
        Rect line = area.line(1).withoutLeft(Columns.FIELD);
        Optional<String> read = readsAs(state);
        box.render(line.columns(0, read.isPresent() ? SHORT : line.columns() - Columns.INDENT), cells);
        read.ifPresent(words -> cells.put(line.column() + SHORT + 2, line.row(), words, Style.INK));
    }

    @Override
    default Optional<Step> type(State state, Key key) {
        return field().press(key).map(typed -> Step.to(state.withTop(with(typed))));
    }

    @Override
    default Step paste(State state, String text) {
        return Step.to(state.withTop(with(field().insert(text))));
    }

    /** Where things stand on it. */
    final class Columns {
        private static final int INDENT = 4;
        private static final int FIELD = 13;
        private static final int ROWS = 3;

        private Columns() {}
    }
}
