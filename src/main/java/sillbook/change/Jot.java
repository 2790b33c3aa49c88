// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.List;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Happening;
import sillbook.model.Journal;
import sillbook.model.Subject;

/** A note is jotted down, on one subject or on several at once. */
public record Jot(List<Subject> subjects, String text, Day day) implements Change {
    public Jot {
        subjects = List.copyOf(subjects);
    }

    @Override
    public Decision on(Journal journal, Hand hand) {
        if (text.isBlank()) {
            return new Refusal("The note is empty. Write a word or two, or leave it.");
        }
        List<Edit> edits = subjects.stream()
                .map(subject -> hand.event(journal, subject, day, new Happening.Jotted(text)))
                .<Edit>map(Edit.Put::new)
                .toList();
        return new Step("jotted: " + text, edits);
    }
}
