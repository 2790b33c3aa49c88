// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.round;

import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
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
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;

/**
 * Asks what else is wrong with pots, or bulbs, of a round.
 *
 * @param labels what they are called
 */
record TroubleSlip(List<Id<?>> those, String labels, Field words) implements Layer {
    private static final int INDENT = 4;
    private static final int FIELD = 13;
    private static final int ROWS = 3;

    TroubleSlip {
        those = List.copyOf(those);
    }

    static TroubleSlip of(String called, List<Id<?>> those) {
        return new TroubleSlip(those, called, Field.EMPTY);
    }

    private TroubleSlip with(Field typed) {
        return new TroubleSlip(those, labels, typed);
    }

    @Override
    public Reach reach() {
        return Reach.FIELD;
    }

    @Override
    public Optional<String> draftName() {
        return Optional.of("trouble of " + labels);
    }

    @Override
    public boolean isHalfDone() {
        return !words.isEmpty();
    }

    @Override
    public Look look(State state, Size body) {
        Rect box = new Rect(FIELD, 1, body.columns() - FIELD - INDENT, 1);
        return Look.slip("Trouble with " + labels, ROWS, (area, cells) -> {
                    cells.put(area.column() + INDENT, area.row() + 1, "What", Style.INK);
                    Rect line = area.line(1).withoutLeft(FIELD);
                    new FieldBox(words).render(line.columns(0, line.columns() - INDENT), cells);
                })
                .withCursor(new FieldBox(words).cursor(box))
                .withPlace("nothing is kept yet")
                .withAside(Aside.of("", "In a few words of your own, or none: leaning, grey spots on the leaves.", ""))
                .withFoot(Action.AGREE, Action.BACK, Action.KEYS);
    }

    @Override
    public Optional<Step> type(State state, Key key) {
        return words.press(key).map(typed -> Step.to(state.withTop(with(typed))));
    }

    @Override
    public Step paste(State state, String text) {
        return Step.to(state.withTop(with(words.insert(text))));
    }

    @Override
    public List<Offer> offers(State state) {
        return List.of(Offer.of(Action.AGREE, () -> mark(state)).saying("mark"));
    }

    private Step mark(State state) {
        State beneath = state.droppingDraft().lifted();
        return Step.to(
                beneath.top() instanceof RoundPage round
                        ? beneath.withTop(round.troubled(those, words.text()))
                        : beneath);
    }
}
