// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.text.Columns;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Field;
import sillbook.ui.draw.FieldBox;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Keys;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Kit;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.Said;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.words.Complaint;
import sillbook.words.Warned;
import sillbook.words.line.Bench;
import sillbook.words.line.Completion;
import sillbook.words.line.LineReading;
import sillbook.words.line.Meaning;
import sillbook.words.line.QuickLine;

/**
 * A line being written: what it means so far stands under it, and nothing is kept before Enter.
 *
 * @param field what is typed
 * @param chosen the completion under the cursor
 * @param begun what stood there before anything was typed
 */
public record LineSlip(Field field, int chosen, String begun) implements Layer {
    public static final LineSlip EMPTY = new LineSlip(Field.EMPTY, 0, "");

    private static final int INDENT = 4;
    private static final int LABEL = 1;
    private static final int FACT = 8;
    private static final int OFFERED = 8;
    private static final int MOST_OFFERED = 4;
    private static final int ROWS = 13;
    private static final int WARNING_GAP = 6;

    /** A temperature to be written of a place. */
    public static LineSlip ofReading(String place) {
        String begun = place + " ";
        return new LineSlip(Field.of(begun), 0, begun);
    }

    private LineSlip with(Field other, int under) {
        return new LineSlip(other, under, begun);
    }

    @Override
    public Reach reach() {
        return Reach.FIELD;
    }

    @Override
    public Optional<String> draftName() {
        return Optional.of(begun.isEmpty() ? "a line" : "a line on " + begun.strip());
    }

    @Override
    public boolean isHalfDone() {
        return !field.text().equals(begun) && !field.isEmpty();
    }

    private LineReading reading(State state) {
        Kit kit = state.kit();
        Bench bench = new Bench(
                state.journal(),
                state.almanac().outlook(),
                kit.handbook(),
                kit.ids(),
                state.almanac().plannings());
        return QuickLine.read(field.text(), caret(), bench);
    }

    private int caret() {
        return field.before().codePoints().map(Character::charCount).sum();
    }

    @Override
    public Look look(State state, Size body) {
        LineReading reading = reading(state);
        Rect box = new Rect(INDENT, 1, body.columns() - 2 * INDENT, 1);
        return Look.slip("A line", ROWS, (area, cells) -> render(reading, box, area, cells))
                .withCursor(new FieldBox(field).cursor(box))
                .withPlace("nothing is kept yet")
                .withAside(aside(reading))
                .withFoot(Action.TAKE_SUGGESTION, Action.CHOOSE_SUGGESTION, Action.RECORD, Action.BACK, Action.KEYS);
    }

    private Aside aside(LineReading reading) {
        if (!begun.isEmpty() && field.text().equals(begun)) {
            String place = begun.strip();
            return Aside.of(
                    "",
                    "What the thermometer says now: " + place + " 5",
                    "or its lowest and highest since it was last reset: " + place + " 3 to 8");
        }
        if (!reading.remarks().isEmpty()) {
            Stream<String> enter = reading.change().stream().map(change -> "Enter keeps it all the same.");
            return Aside.of(Stream.concat(reading.remarks().stream().map(Warned::says), enter)
                    .collect(Collectors.joining(" ")));
        }
        return reading.complaint()
                .map(complaint -> Aside.of(complaint.sentence()))
                .orElseGet(() -> Aside.of(
                        "",
                        "As it comes to mind: 6 x Marrow Lane x5, 19 cm, fridge, 14 oct",
                        "T1-T6 cool room   T4 roots, 6 cm   cellar all moist, T4 dry   note T4: ..."));
    }

    private void render(LineReading reading, Rect box, Rect area, Cells cells) {
        Rect line = area.line(box.row());
        new FieldBox(field).render(line.columns(box.column(), box.columns()), cells);
        int row = 2;
        List<Completion> offered = reading.completions();
        int first = Math.max(0, Math.min(chosen, offered.size() - MOST_OFFERED));
        for (int i = first; i < Math.min(offered.size(), first + MOST_OFFERED); i++) {
            offer(offered.get(i), i == chosen, area.line(row++), cells);
        }
        for (Fact fact : facts(reading)) {
            fact.render(area.line(row++), cells);
        }
    }

    private static void offer(Completion completion, boolean isChosen, Rect line, Cells cells) {
        Style style = isChosen ? Style.BOLD : Style.INK;
        if (isChosen) {
            cells.put(line.column() + OFFERED - 2, line.row(), Sign.CURSOR, Style.BOLD);
        }
        int after = cells.put(line.column() + OFFERED, line.row(), completion.shown(), style);
        cells.put(after + 2, line.row(), completion.aside(), Style.PENCIL);
    }

    private static List<Fact> facts(LineReading reading) {
        List<Fact> facts = new ArrayList<>();
        for (Meaning meaning : reading.means()) {
            facts.add(new Fact(facts.isEmpty() ? "Means" : "", meaning.says(), meaning.warning()));
        }
        for (int i = 0; i < reading.then().size(); i++) {
            facts.add(new Fact(i == 0 ? "Then" : "", reading.then().get(i), ""));
        }
        return facts;
    }

    /** One fact under the line. */
    private record Fact(String label, String says, String warning) {
        void render(Rect line, Cells cells) {
            cells.put(line.column() + LABEL, line.row(), label, Style.BOLD);
            int room = line.columns() - FACT - 1;
            int after = cells.put(line.column() + FACT, line.row(), Columns.fit(says, room), Style.INK);
            if (!warning.isEmpty()) {
                cells.put(after + WARNING_GAP, line.row(), "! " + warning, Style.RUST);
            }
        }
    }

    @Override
    public Optional<Step> type(State state, Key key) {
        if (key.equals(Keys.UP) || key.equals(Keys.DOWN)) {
            return Optional.empty();
        }
        return field.press(key).map(typed -> Step.to(state.silent().withTop(with(typed, 0))));
    }

    @Override
    public Step paste(State state, String text) {
        return Step.to(state.silent().withTop(with(field.insert(text), 0)));
    }

    @Override
    public List<Offer> offers(State state) {
        LineReading reading = reading(state);
        boolean none = reading.completions().isEmpty();
        return List.of(
                Offer.of(Action.RECORD, () -> keep(state, reading)).saying("keep, one step"),
                Offer.of(Action.TAKE_SUGGESTION, () -> take(state, reading)).offIf(none, "nothing is offered"),
                Offer.byKey(Action.CHOOSE_SUGGESTION, key -> choose(state, key, reading))
                        .offIf(none, "nothing is offered"));
    }

    private Step keep(State state, LineReading reading) {
        int layersAfter = state.layers().over().size() - 1;
        return reading.change()
                .map(change -> Step.keep(state, change, layersAfter))
                .orElseGet(() -> Step.to(state.saying(Said.problem(reading.complaint()
                        .map(Complaint::sentence)
                        .orElse("Write a line first, or leave it with Esc.")))));
    }

    private Step take(State state, LineReading reading) {
        Completion completion = reading.completions().get(chosen);
        String taken = completion.applyTo(field.text());
        return Step.to(state.silent().withTop(with(Field.of(taken), 0)));
    }

    private Step choose(State state, Key key, LineReading reading) {
        int last = reading.completions().size() - 1;
        int next = Math.max(0, Math.min(last, chosen + (key.equals(Keys.DOWN) ? 1 : -1)));
        return Step.to(state.withTop(with(field, next)));
    }
}
