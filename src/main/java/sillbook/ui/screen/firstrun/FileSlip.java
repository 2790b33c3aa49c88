// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.firstrun;

import java.util.List;
import java.util.Optional;
import sillbook.model.Settings.Colours;
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
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;

/** Asks which file to open. */
record FileSlip(Field file) implements Layer {
    static final FileSlip EMPTY = new FileSlip(Field.EMPTY);
    private static final int INDENT = 4;
    private static final int FIELD = 10;
    private static final int ROWS = 3;

    @Override
    public Reach reach() {
        return Reach.FIELD;
    }

    @Override
    public Optional<String> draftName() {
        return Optional.of("open a journal");
    }

    @Override
    public boolean isHalfDone() {
        return !file.isEmpty();
    }

    @Override
    public Look look(State state, Size body) {
        Rect box = new Rect(FIELD, 1, body.columns() - FIELD - INDENT, 1);
        return Look.slip("Open a journal", ROWS, (area, cells) -> {
                    cells.put(area.column() + INDENT, area.row() + 1, "File", Style.INK);
                    Rect line = area.line(1).withoutLeft(FIELD);
                    new FieldBox(file).render(line.columns(0, line.columns() - INDENT), cells);
                })
                .withCursor(new FieldBox(file).cursor(box))
                .withAside(Aside.of("Write or paste the file's name, with its folder. It is only looked at."))
                .withFoot(Action.AGREE, Action.BACK, Action.KEYS);
    }

    @Override
    public Optional<Step> type(State state, Key key) {
        return file.press(key).map(typed -> Step.to(state.withTop(new FileSlip(typed))));
    }

    @Override
    public Step paste(State state, String text) {
        return Step.to(state.withTop(new FileSlip(file.insert(text))));
    }

    @Override
    public List<Offer> offers(State state) {
        String name = file.text().strip();
        return List.of(Offer.of(Action.AGREE, () -> Step.to(state, new Effect.OpenJournal(name, colours(state))))
                .saying("open it")
                .offIf(name.isEmpty(), "no file is named yet"));
    }

    private static Colours colours(State state) {
        return state.journal().settings().colours();
    }
}
