// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Journal;
import sillbook.model.Subject;

/**
 * A job is put off, or left out altogether.
 *
 * @param subjects the pots or places whose job it is
 * @param until the day it is put off to; empty when it is not going to be done
 * @param reason in the grower's words; may be empty
 */
public record Answer(List<Subject> subjects, JobKind job, Optional<LocalDate> until, String reason) implements Change {
    public Answer {
        subjects = List.copyOf(subjects);
    }

    @Override
    public Stream<? extends Id<?>> names() {
        return subjects.stream().flatMap(Subject::refersTo);
    }

    @Override
    public Decision decide(Journal journal, Hand hand) {
        return Rules.firstOf(Rules.someSubjects(subjects), later(hand))
                .<Decision>map(refusal -> refusal)
                .orElseGet(() -> step(journal, hand));
    }

    private Optional<Refusal> later(Hand hand) {
        return until.filter(day -> !day.isAfter(hand.today()))
                .flatMap(day -> Rules.refuse(
                        Said.day(day) + " is not after today. A job is put off to a later day, as +3 or fri."));
    }

    private Step step(Journal journal, Hand hand) {
        Happening what = until.<Happening>map(day -> new Happening.PutOff(job, day, reason))
                .orElseGet(() -> new Happening.LeftOut(job, reason));
        List<Edit> edits = subjects.stream()
                .map(subject -> hand.event(journal, subject, Day.on(hand.today()), what))
                .<Edit>map(Edit.Put::new)
                .toList();
        String whose =
                subjects.stream().map(subject -> Said.subject(journal, subject)).collect(Collectors.joining(" "));
        String answer = until.map(day -> " put off to " + Said.day(day)).orElse(" left out");
        return new Step(whose + ": " + Said.words(job) + answer, edits);
    }
}
