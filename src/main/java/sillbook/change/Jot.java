// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Subject;

/** A note is jotted down, on one subject or on several at once. */
public record Jot(List<Subject> subjects, String text, Day day) implements Change {
    public Jot {
        subjects = List.copyOf(subjects);
    }

    @Override
    public Stream<? extends Id<?>> names() {
        return subjects.stream().flatMap(Subject::refersTo);
    }

    @Override
    public Decision decide(Journal journal, Hand hand) {
        return Rules.firstOf(Rules.someSubjects(subjects), someText())
                .<Decision>map(refusal -> refusal)
                .orElseGet(() -> step(journal, hand));
    }

    private Optional<Refusal> someText() {
        return text.isBlank() ? Rules.refuse("The note is empty. Write a word or two, or leave it.") : Optional.empty();
    }

    private Step step(Journal journal, Hand hand) {
        List<Edit> edits = subjects.stream()
                .map(subject -> hand.event(journal, subject, day, new Happening.Jotted(text)))
                .<Edit>map(Edit.Put::new)
                .toList();
        return new Step("jotted: " + text, edits);
    }
}
