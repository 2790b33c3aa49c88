// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Journal;

/**
 * Several changes as one step, each decided on what the ones before it leave behind.
 *
 * @param name the step's name; when empty, that of the last change
 */
public record Together(String name, List<Change> changes) implements Change {
    public Together {
        changes = List.copyOf(changes);
        if (changes.isEmpty()) {
            throw new IllegalArgumentException("nothing to do together");
        }
    }

    @Override
    public Stream<? extends Id<?>> names() {
        return Stream.empty();
    }

    @Override
    public Decision decide(Journal journal, Hand hand) {
        List<Edit> edits = new ArrayList<>();
        String lastName = name;
        Journal current = journal;
        for (Change change : changes) {
            Decision decision = change.on(current, hand);
            if (!(decision instanceof Step step)) {
                return decision;
            }
            edits.addAll(step.edits());
            lastName = step.name();
            current = current.with(step.edits());
        }
        return new Step(name.isEmpty() ? lastName : name, edits);
    }
}
