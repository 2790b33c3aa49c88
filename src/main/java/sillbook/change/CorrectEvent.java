// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.List;
import java.util.Optional;
import sillbook.model.Edit;
import sillbook.model.Event;
import sillbook.model.Journal;

/**
 * An entry of the past is corrected. When it was first written down stays; that it was corrected now is kept with it.
 *
 * @param corrected the entry as it should have been, under its own id
 */
public record CorrectEvent(Event corrected) implements Change {
    @Override
    public Decision on(Journal journal, Hand hand) {
        Optional<Event> before = journal.events().find(corrected.id());
        if (before.isEmpty()) {
            return new Refusal("That entry is no longer in the journal. Nothing was corrected.");
        }
        return Rules.hasHappened(corrected.day(), hand)
                .<Decision>map(refusal -> refusal)
                .orElseGet(() -> step(journal, before.get(), hand));
    }

    private Step step(Journal journal, Event before, Hand hand) {
        Event revised = new Event(
                before.id(),
                corrected.subject(),
                corrected.day(),
                corrected.order(),
                before.writtenAt(),
                Optional.of(hand.now()),
                corrected.what());
        return new Step(Said.entity(journal, revised) + " corrected", List.of(new Edit.Put(revised)));
    }
}
