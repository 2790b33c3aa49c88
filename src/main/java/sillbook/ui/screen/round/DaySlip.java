// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.round;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.model.Day;
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
import sillbook.words.DayReader;
import sillbook.words.Days;
import sillbook.words.Heard;

/** Asks on which day pots were looked at. */
record DaySlip(Field words) implements Layer {
    static final DaySlip OPEN = new DaySlip(Field.EMPTY);
    private static final int INDENT = 4;
    private static final int FIELD = 13;
    private static final int COLUMNS = 22;
    private static final int ROWS = 3;

    @Override
    public Reach reach() {
        return Reach.FIELD;
    }

    @Override
    public Optional<String> draftName() {
        return Optional.of("day of the round");
    }

    @Override
    public boolean isHalfDone() {
        return !words.isEmpty();
    }

    /** A day that has been; today while nothing is written. */
    private Heard<LocalDate> day(State state) {
        LocalDate today = state.shown().today();
        Heard<LocalDate> day = words.isEmpty()
                ? Heard.as(today)
                : DayReader.back(today).parse(words.text()).map(Day::likely);
        boolean isAhead = day.value().filter(today::isBefore).isPresent();
        return isAhead ? Heard.not("still to come", "That day is still to come. Write one up to today.") : day;
    }

    @Override
    public Look look(State state, Size body) {
        Rect box = new Rect(FIELD, 1, body.columns() - FIELD - INDENT, 1);
        Heard<LocalDate> day = day(state);
        String read = day.fold(Days::full, not -> "! " + not.brief());
        return Look.slip("Looked at on", ROWS, (area, cells) -> {
                    cells.put(area.column() + INDENT, area.row() + 1, "Day", Style.INK);
                    Rect line = area.line(1).withoutLeft(FIELD);
                    new FieldBox(words).render(line.columns(0, COLUMNS), cells);
                    cells.put(line.column() + COLUMNS + 2, line.row(), read, Style.INK);
                })
                .withCursor(new FieldBox(words).cursor(box))
                .withPlace("nothing is kept yet")
                .withAside(Aside.of("", day.fold(known -> "yesterday, fri, -3, 14 nov.", not -> not.sentence()), ""))
                .withFoot(Action.AGREE, Action.BACK, Action.KEYS);
    }

    @Override
    public Optional<Step> type(State state, Key key) {
        return words.press(key).map(typed -> Step.to(state.withTop(new DaySlip(typed))));
    }

    @Override
    public Step paste(State state, String text) {
        return Step.to(state.withTop(new DaySlip(words.insert(text))));
    }

    @Override
    public List<Offer> offers(State state) {
        return List.of(Offer.of(Action.AGREE, () -> taken(state))
                .saying("take it")
                .offIf(day(state).fold(known -> Optional.empty(), not -> Optional.of(not.brief()))));
    }

    private Step taken(State state) {
        State beneath = state.droppingDraft().lifted();
        return Step.to(
                beneath.top() instanceof RoundPage round
                        ? beneath.withTop(round.on(day(state).value().orElseThrow()))
                        : beneath);
    }
}
