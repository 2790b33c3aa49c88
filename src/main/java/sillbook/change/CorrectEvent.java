// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Edit;
import sillbook.model.Event;
import sillbook.model.Id;
import sillbook.model.Journal;

/**
 * An entry of the past is corrected. When it was first written down stays; that it was corrected now is kept with it.
 *
 * @param corrected the entry as it should have been, under its own id
 */
public record CorrectEvent(Event corrected) implements Change {
    @Override
    public Stream<? extends Id<?>> names() {
        return Stream.concat(Stream.of(corrected.id()), corrected.refersTo());
    }

    @Override
    public Decision decide(Journal journal, Hand hand) {
        Event revised = revised(journal.events().get(corrected.id()), hand);
        List<Edit> edits = List.of(new Edit.Put(revised));
        return Rules.firstOf(
                        Rules.hasHappened(corrected.day(), hand),
                        Rules.staysPotted(journal.with(edits), corrected.subject()),
                        afterPotting(journal.with(edits)))
                .<Decision>map(refusal -> refusal)
                .orElseGet(() -> new Step(Said.entity(journal, revised) + " corrected", edits));
    }

    private Optional<Refusal> afterPotting(Journal after) {
        return corrected
                .subject()
                .asPot()
                .filter(pot -> corrected.what().needsPotting())
                .flatMap(pot -> Rules.potted(after, List.of(pot), corrected.day()));
    }

    private Event revised(Event before, Hand hand) {
        return new Event(
                before.id(),
                corrected.subject(),
                corrected.day(),
                corrected.order(),
                before.writtenAt(),
                Optional.of(hand.now()),
                corrected.what());
    }
}
