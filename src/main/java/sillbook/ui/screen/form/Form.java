// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.change.Change;
import sillbook.ui.draw.Field;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Keys;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.Said;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;

/**
 * A sheet being filled in.
 *
 * @param fields what is typed in each blank
 * @param at the blank being filled in
 * @param asks whether suggestions stand under it: from the first letter typed until one is taken
 * @param chosen the suggestion under the cursor
 */
public record Form(Sheet sheet, List<Field> fields, int at, boolean asks, int chosen) implements Layer {

    public Form {
        fields = List.copyOf(fields);
    }

    /** A sheet as it opens, its first empty blank under the cursor. */
    public static Form of(Sheet sheet) {
        Answers prefilled = sheet.prefilled();
        List<Field> fields = sheet.blanks().stream()
                .map(blank -> Field.of(prefilled.text(blank)))
                .toList();
        int firstEmpty = 0;
        while (firstEmpty < fields.size() - 1 && !fields.get(firstEmpty).isEmpty()) {
            firstEmpty++;
        }
        return new Form(sheet, fields, fields.get(firstEmpty).isEmpty() ? firstEmpty : 0, false, 0);
    }

    public Blank blank() {
        return sheet.blanks().get(at);
    }

    Field field() {
        return fields.get(at);
    }

    public Answers answers() {
        Answers answers = Answers.NONE;
        for (int i = 0; i < fields.size(); i++) {
            answers = answers.with(sheet.blanks().get(i), fields.get(i).text());
        }
        return answers;
    }

    List<Suggestion> suggestions(State state) {
        return asks ? sheet.suggestions(state, answers(), blank()) : List.of();
    }

    @Override
    public Reach reach() {
        return Reach.FIELD;
    }

    @Override
    public Optional<String> draftName() {
        return sheet.draftName();
    }

    @Override
    public boolean isHalfDone() {
        return !fields.equals(of(sheet).fields) && !answers().equals(of(sheet).answers());
    }

    @Override
    public Look look(State state, Size body) {
        return new FormLook(this, state).look();
    }

    @Override
    public Optional<Step> type(State state, Key key) {
        return field().press(key).map(field -> Step.to(state.withTop(typed(field))));
    }

    @Override
    public Step paste(State state, String text) {
        return Step.to(state.withTop(typed(field().insert(text))));
    }

    @Override
    public List<Offer> offers(State state) {
        List<Offer> offers = new ArrayList<>();
        if (!suggestions(state).isEmpty()) {
            offers.add(Offer.byKey(Action.CHOOSE_SUGGESTION, key -> choose(state, key)));
            offers.add(Offer.byKey(Action.TAKE_SUGGESTION, key -> take(state, key.equals(Keys.TAB))));
        }
        offers.add(Offer.byKey(Action.NEXT_BLANK, key -> step(state, isForwards(key) ? 1 : -1)));
        offers.add(Offer.of(Action.RECORD, () -> record(state)).saying(sheet.recordWords()));
        offers.addAll(sheet.offers(state, answers()));
        return offers;
    }

    private static boolean isForwards(Key key) {
        return key.equals(Keys.TAB) || key.equals(Keys.DOWN);
    }

    private Form typed(Field field) {
        boolean changed = !field.text().equals(field().text());
        return new Form(sheet, replaced(field), at, changed || asks, changed ? 0 : chosen);
    }

    private List<Field> replaced(Field field) {
        List<Field> changed = new ArrayList<>(fields);
        changed.set(at, field);
        return changed;
    }

    private Step choose(State state, Key key) {
        int last = suggestions(state).size() - 1;
        int next = Math.max(0, Math.min(last, chosen + (isForwards(key) ? 1 : -1)));
        return Step.to(state.withTop(new Form(sheet, fields, at, asks, next)));
    }

    private Step take(State state, boolean goesOn) {
        Suggestion taken = suggestions(state).get(chosen);
        int next = goesOn ? Math.min(at + 1, fields.size() - 1) : at;
        State filled = state.withTop(new Form(sheet, replaced(Field.of(taken.text())), next, false, 0));
        return Step.to(taken.makes().map(filled::laid).orElse(filled));
    }

    private Step step(State state, int by) {
        return Step.to(state.withTop(at(Math.floorMod(at + by, fields.size()))));
    }

    private Form at(int place) {
        return new Form(sheet, fields, place, false, 0);
    }

    /** Records it, or goes to the first blank something is wrong with. */
    private Step record(State state) {
        Reading reading = sheet.read(state, answers());
        Optional<Map.Entry<Blank, Remark>> problem = reading.firstProblem();
        if (problem.isPresent()) {
            int wrong = sheet.blanks().indexOf(problem.get().getKey());
            return Step.to(state.withTop(at(wrong))
                    .saying(Said.problem(problem.get().getValue().problem())));
        }
        return reading.change().map(change -> keep(state, change)).orElseGet(() -> Step.to(state));
    }

    /** What opens afterwards is laid beneath the form, and comes to light when the form is gone. */
    private Step keep(State state, Change change) {
        Optional<Layer> next = sheet.sequel().after(state, change);
        List<Layer> over = state.layers().over();
        boolean waits = over.size() > 1 && next.equals(Optional.of(over.get(over.size() - 2)));
        State ready = next.filter(layer -> !waits)
                .map(layer -> state.lifted().laid(layer).laid(this).withTop(this))
                .orElse(state);
        return Step.keep(ready, change, ready.layers().over().size() - 1);
    }
}
