// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import java.util.List;
import java.util.Optional;
import sillbook.change.RemovePots;
import sillbook.model.Id;
import sillbook.model.Labels;
import sillbook.model.Pot;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Field;
import sillbook.ui.draw.FieldBox;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Sentences;
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
 * Asks whether pots are to go with all their entries. Agreed to by typing the label; of several, how many they are.
 *
 * @param typed what stands in its field so far
 */
public record RemoveSlip(List<Id<Pot>> pots, Field typed) implements Layer {
    private static final int FIELD_COLUMNS = 6;

    public RemoveSlip {
        pots = List.copyOf(pots);
    }

    public static RemoveSlip of(List<Id<Pot>> pots) {
        return new RemoveSlip(pots, Field.EMPTY);
    }

    @Override
    public Reach reach() {
        return Reach.FIELD;
    }

    @Override
    public Look look(State state, Size body) {
        Sentences told = Sentences.of(sentences(state), body.columns());
        String ask = ask();
        int asked = told.rows() + 1;
        Rect box = new Rect(Sentences.INDENT + Width.of(ask) + 2, asked, FIELD_COLUMNS, 1);
        return Look.slip("Remove " + labels(state), asked + 1, (area, cells) -> render(told, ask, box, area, cells))
                .withCursor(new FieldBox(typed).cursor(box))
                .withAside(Aside.of(
                        "", "Nothing goes until " + wanted(state) + " stands there. U can bring it back later.", ""))
                .withFoot(Action.AGREE, Action.BACK, Action.KEYS);
    }

    private void render(Sentences told, String ask, Rect box, Rect area, Cells cells) {
        told.render(area, cells);
        Rect line = area.line(box.row());
        cells.put(line.column() + Sentences.INDENT, line.row(), ask, Style.INK);
        new FieldBox(typed).render(line.columns(box.column(), FIELD_COLUMNS), cells);
    }

    private List<String> sentences(State state) {
        return List.of(
                Going.of(state.journal(), pots).words(),
                "If it only failed, write an outcome instead: then next year knows why.");
    }

    private String ask() {
        return pots.size() == 1 ? "To remove it, type its label:" : "To remove them, type how many they are:";
    }

    private String wanted(State state) {
        return pots.size() == 1 ? "the whole label, " + confirmation(state) + "," : confirmation(state);
    }

    private String confirmation(State state) {
        return pots.size() == 1 ? labels(state) : Integer.toString(pots.size());
    }

    private String labels(State state) {
        return Labels.say(pots.stream()
                .map(pot -> state.journal().pots().get(pot).label())
                .toList());
    }

    @Override
    public Optional<Step> type(State state, Key key) {
        return typed.press(key).map(field -> Step.to(state.withTop(new RemoveSlip(pots, field))));
    }

    @Override
    public Step paste(State state, String text) {
        return Step.to(state);
    }

    @Override
    public List<Offer> offers(State state) {
        boolean agreed = typed.text().strip().equalsIgnoreCase(confirmation(state));
        int layersAfter = state.layers().over().size() - 1;
        return List.of(Offer.of(Action.AGREE, () -> Step.keep(state, new RemovePots(pots), layersAfter))
                .saying("remove, once typed")
                .offIf(!agreed, "type " + confirmation(state) + " first"));
    }
}
