// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.change.Answer;
import sillbook.model.JobKind;
import sillbook.model.Subject;
import sillbook.text.Fold;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.State;
import sillbook.ui.screen.form.Answers;
import sillbook.ui.screen.form.Blank;
import sillbook.ui.screen.form.Reading;
import sillbook.ui.screen.form.Remark;
import sillbook.ui.screen.form.Sheet;
import sillbook.ui.screen.form.Suggestion;
import sillbook.words.DayReader;
import sillbook.words.Days;
import sillbook.words.Heard;
import sillbook.words.Terms;

/**
 * A job is put off to another day, or is not going to be done at all.
 *
 * @param subjects the pots or the place whose job it is
 * @param whose what those are called
 */
public record PutOffSheet(List<Subject> subjects, JobKind job, String whose) implements Sheet {
    private static final Blank UNTIL = new Blank("Until", 20);
    private static final Blank REASON = new Blank("Reason", 50);
    private static final String NOT_AT_ALL = "not at all";

    public PutOffSheet {
        subjects = List.copyOf(subjects);
    }

    @Override
    public String title(State state) {
        return "Another day for " + whose + ", " + Terms.JOBS.say(job);
    }

    @Override
    public boolean isSlip() {
        return true;
    }

    @Override
    public List<Blank> blanks() {
        return List.of(UNTIL, REASON);
    }

    @Override
    public Reading read(State state, Answers answers) {
        if (isNotAtAll(answers)) {
            Remark noted = Remark.understood("it is not asked for again");
            return Reading.NOTHING.with(UNTIL, noted).meaning(answer(Optional.empty(), answers));
        }
        Heard<LocalDate> day = day(state, answers);
        Reading reading =
                Reading.NOTHING.with(UNTIL, day.fold(read -> Remark.understood(readBack(state, read)), Blanks::wrong));
        return day.value()
                .map(until -> reading.meaning(answer(Optional.of(until), answers)))
                .orElse(reading);
    }

    private static boolean isNotAtAll(Answers answers) {
        return Fold.of(answers.text(UNTIL)).equals(NOT_AT_ALL);
    }

    private static Heard<LocalDate> day(State state, Answers answers) {
        LocalDate today = state.shown().today();
        return DayReader.ahead(today)
                .parseExact(answers.text(UNTIL))
                .then(day -> day.isAfter(today)
                        ? Heard.as(day)
                        : Heard.not(
                                "after today",
                                Days.day(day) + " is not after today. A job is put off to a later day, as +3 or fri."));
    }

    private static String readBack(State state, LocalDate day) {
        return Days.full(day) + ", " + Days.away(day, state.shown().today());
    }

    private Answer answer(Optional<LocalDate> until, Answers answers) {
        return new Answer(subjects, job, until, answers.text(REASON));
    }

    @Override
    public List<Suggestion> suggestions(State state, Answers answers, Blank blank) {
        boolean begun = !answers.isBlank(UNTIL) && NOT_AT_ALL.startsWith(Fold.of(answers.text(UNTIL)));
        return blank.equals(UNTIL) && begun && !isNotAtAll(answers)
                ? List.of(Suggestion.of(NOT_AT_ALL, "it is not asked for again"))
                : List.of();
    }

    @Override
    public Aside aside(State state, Answers answers, Blank blank) {
        return Aside.of(
                "", "A day ahead, as fri, +3 or 20 jan; or: not at all.", "A reason is kept with it, if you give one.");
    }

    @Override
    public String recordWords() {
        return "put it off";
    }

    @Override
    public Optional<String> draftName() {
        return Optional.of("another day");
    }
}
