// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.imports;

import java.util.List;
import java.util.Optional;
import sillbook.ui.draw.Field;
import sillbook.ui.draw.FieldBox;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.Said;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;

/** Asks in which file a list stands. It stays under the list, so that a file that was mended is read again with a key. */
public record ListFileSlip(Field file) implements Layer {
    public static final ListFileSlip EMPTY = new ListFileSlip(Field.EMPTY);
    private static final int INDENT = 4;
    private static final int FIELD = 10;
    private static final int ROWS = 3;

    @Override
    public Reach reach() {
        return Reach.FIELD;
    }

    @Override
    public Look look(State state, Size body) {
        Rect box = new Rect(FIELD, 1, body.columns() - FIELD - INDENT, 1);
        return Look.slip("Import a list of varieties or purchases", ROWS, (area, cells) -> {
                    cells.put(area.column() + INDENT, area.row() + 1, "File", Style.INK);
                    Rect line = area.line(1).withoutLeft(FIELD);
                    new FieldBox(file).render(line.columns(0, line.columns() - INDENT), cells);
                })
                .withCursor(new FieldBox(file).cursor(box))
                .withAside(Aside.of(
                        "",
                        "A CSV file in UTF-8, its first row the names of columns: name, kind, height ..",
                        "Nothing is kept before you have seen what each row comes to."))
                .withFoot(Action.AGREE, Action.BACK, Action.KEYS);
    }

    @Override
    public Optional<Step> type(State state, Key key) {
        return file.press(key).map(typed -> Step.to(state.withTop(new ListFileSlip(typed))));
    }

    @Override
    public Step paste(State state, String text) {
        return Step.to(state.withTop(new ListFileSlip(file.insert(text))));
    }

    @Override
    public List<Offer> offers(State state) {
        String name = file.text().strip();
        return List.of(Offer.of(Action.AGREE, () -> Step.to(state, new Effect.ReadTable(name)))
                .saying("look at it")
                .offIf(name.isEmpty(), "no file is named yet"));
    }

    @Override
    public Step tableRead(State state, Message.TableRead message) {
        return Step.to(ListPreview.of(state, message.file(), message.table())
                .fold(state::laid, why -> state.saying(Said.problem(message.file() + ": " + why.sentence()))));
    }
}
