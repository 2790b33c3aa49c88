// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.entry;

import java.util.List;
import java.util.Optional;
import sillbook.change.Change;
import sillbook.change.CorrectEvent;
import sillbook.change.Together;
import sillbook.model.Day;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Place;
import sillbook.model.Stage;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.State;
import sillbook.ui.screen.form.Answers;
import sillbook.ui.screen.form.Blank;
import sillbook.ui.screen.form.Choices;
import sillbook.ui.screen.form.Reading;
import sillbook.ui.screen.form.Remark;
import sillbook.ui.screen.form.Sheet;
import sillbook.ui.screen.form.Suggestion;
import sillbook.words.DayReader;
import sillbook.words.Days;
import sillbook.words.Entries;
import sillbook.words.Heard;

/**
 * An entry of the past is corrected: its day, and the words of a note or the place of a move.
 *
 * @param events what one act wrote, alike for each pot
 * @param about who it is about, as it is called
 * @param place where it moved to, for a move
 */
record EventSheet(List<Event> events, String about, String place) implements Sheet {
    private static final Blank DAY = new Blank("Day", 24);
    private static final Blank WORDS = new Blank("Note", 62);
    private static final Blank PLACE = new Blank("Place", 24);

    EventSheet {
        events = List.copyOf(events);
    }

    private Event first() {
        return events.get(0);
    }

    private Happening what() {
        return first().what();
    }

    @Override
    public String title(State state) {
        return "Correct an entry of " + about + ": " + new Entries(state.journal()).say(what());
    }

    @Override
    public boolean isSlip() {
        return true;
    }

    @Override
    public List<Blank> blanks() {
        if (what() instanceof Happening.Jotted) {
            return List.of(DAY, WORDS);
        }
        return what() instanceof Happening.Moved ? List.of(DAY, PLACE) : List.of(DAY);
    }

    @Override
    public Answers prefilled() {
        Answers day = Answers.NONE.with(DAY, Days.full(first().day()));
        if (what() instanceof Happening.Jotted jotted) {
            return day.with(WORDS, jotted.text());
        }
        return what() instanceof Happening.Moved ? day.with(PLACE, place) : day;
    }

    @Override
    public Reading read(State state, Answers answers) {
        Heard<Day> day = DayReader.back(state.shown().today()).parse(answers.text(DAY));
        Heard<Happening> what = what(state, answers);
        Reading reading = Reading.NOTHING.with(DAY, remark(day.map(Days::full)));
        for (Blank blank : blanks().subList(1, blanks().size())) {
            reading = reading.with(blank, remark(what.map(same -> "")));
        }
        Optional<Change> change = day.value().flatMap(on -> what.value().map(happened -> change(on, happened)));
        return change.isPresent() ? reading.meaning(change.get()) : reading;
    }

    private static Remark remark(Heard<String> heard) {
        return heard.fold(Remark::understood, not -> Remark.wrong(not.brief(), not.sentence()));
    }

    private Heard<Happening> what(State state, Answers answers) {
        if (what() instanceof Happening.Jotted) {
            return answers.isBlank(WORDS)
                    ? Heard.not("empty", "The note is empty. Write a word or two, or leave it with Esc.")
                    : Heard.as(new Happening.Jotted(answers.text(WORDS)));
        }
        if (what() instanceof Happening.Moved moved) {
            return Choices.places(state.journal())
                    .parse(answers.text(PLACE))
                    .map((Place there) -> new Happening.Moved(there.id(), stage(moved, there)));
        }
        return Heard.as(what());
    }

    /** Another place brings its own stage with it. */
    private static Stage stage(Happening.Moved moved, Place there) {
        return there.id().equals(moved.place()) ? moved.stage() : there.serves();
    }

    private Change change(Day day, Happening what) {
        List<Change> each = events.stream()
                .<Change>map(event -> new CorrectEvent(corrected(event, day, what)))
                .toList();
        return each.size() == 1 ? each.get(0) : new Together(about + ": entry corrected", each);
    }

    private static Event corrected(Event event, Day day, Happening what) {
        return new Event(event.id(), event.subject(), day, event.order(), event.writtenAt(), event.revisedAt(), what);
    }

    @Override
    public List<Suggestion> suggestions(State state, Answers answers, Blank blank) {
        return blank.equals(PLACE)
                ? Choices.places(state.journal()).beginning(answers.text(PLACE)).stream()
                        .map(there -> Suggestion.of(there.name(), ""))
                        .toList()
                : List.of();
    }

    @Override
    public Aside aside(State state, Answers answers, Blank blank) {
        return Aside.of("", "As it really was. What stood there before stays among the steps.", "");
    }

    @Override
    public String recordWords() {
        return "correct";
    }

    @Override
    public Optional<String> draftName() {
        return Optional.of("correct an entry");
    }
}
