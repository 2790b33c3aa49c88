// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import java.util.List;
import java.util.Optional;
import sillbook.change.Jot;
import sillbook.model.Day;
import sillbook.model.Subject;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.State;
import sillbook.ui.screen.form.Answers;
import sillbook.ui.screen.form.Blank;
import sillbook.ui.screen.form.Reading;
import sillbook.ui.screen.form.Remark;
import sillbook.ui.screen.form.Sheet;
import sillbook.words.Heard;

/**
 * A note is jotted.
 *
 * @param subjects what it is about
 * @param about what that is called
 */
public record JotSheet(List<Subject> subjects, String about) implements Sheet {
    private static final Blank NOTE = new Blank("Note", 62);
    private static final Blank DAY = new Blank("Day", 20);

    public JotSheet {
        subjects = List.copyOf(subjects);
    }

    @Override
    public String title(State state) {
        return "Jot on " + about;
    }

    @Override
    public boolean isSlip() {
        return true;
    }

    @Override
    public List<Blank> blanks() {
        return List.of(NOTE, DAY);
    }

    @Override
    public Answers prefilled() {
        return Answers.NONE.with(DAY, "today");
    }

    @Override
    public Reading read(State state, Answers answers) {
        Heard<Day> day = Blanks.dayThatWas(state, answers.text(DAY));
        Remark note = answers.isBlank(NOTE)
                ? Remark.wrong("", "The note is empty. Write a word or two, or leave it with Esc.")
                : Remark.understood("");
        Reading reading = Reading.NOTHING.with(NOTE, note).with(DAY, Blanks.remark(day));
        return day.value()
                .map(on -> reading.meaning(new Jot(subjects, answers.text(NOTE), on)))
                .orElse(reading);
    }

    @Override
    public Aside aside(State state, Answers answers, Blank blank) {
        return Aside.of("", "In your own words, as long as you like; the Diary finds it again.", "");
    }

    @Override
    public String recordWords() {
        return "jot it";
    }

    @Override
    public Optional<String> draftName() {
        return Optional.of("note");
    }
}
