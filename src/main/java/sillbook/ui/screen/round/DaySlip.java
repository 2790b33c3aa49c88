// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.round;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.model.Day;
import sillbook.ui.draw.Field;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.form.OneField;
import sillbook.words.DayReader;
import sillbook.words.Days;
import sillbook.words.Heard;

/** Asks on which day pots were looked at. */
record DaySlip(Field words) implements OneField {
    static final DaySlip OPEN = new DaySlip(Field.EMPTY);

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
    public String title() {
        return "Looked at on";
    }

    @Override
    public String label() {
        return "Day";
    }

    @Override
    public Field field() {
        return words;
    }

    @Override
    public DaySlip with(Field typed) {
        return new DaySlip(typed);
    }

    @Override
    public String place() {
        return "nothing is kept yet";
    }

    @Override
    public Aside aside(State state) {
        return Aside.of("", day(state).fold(known -> "yesterday, fri, -3, 14 nov.", not -> not.sentence()), "");
    }

    @Override
    public Optional<String> readsAs(State state) {
        return Optional.of(day(state).fold(Days::full, not -> "! " + not.brief()));
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
