// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import sillbook.model.Edit;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.ReadingSource;

/**
 * The edits of one change, under the name it has in the list of steps.
 *
 * @param name in plain words: {@code T4 into the cool room, stair window}
 */
public record Step(String name, List<Edit> edits) implements Decision {
    public Step {
        edits = List.copyOf(edits);
    }

    /**
     * The step by which the readings of a source are taken in.
     *
     * @param beside what is written down with them
     */
    public static Step takenIn(ReadingSource source, String place, List<Edit> beside) {
        return new Step(
                Said.plural(source.readings(), "reading") + " of " + place + " taken in from " + source.name(),
                Stream.concat(Stream.of(new Edit.Put(source)), beside.stream()).toList());
    }

    /** The same, and one thing more. */
    public Step with(Edit more) {
        return new Step(name, Stream.concat(edits.stream(), Stream.of(more)).toList());
    }

    /** The pots it pots or moves. What is foretold of them then is kept with it. */
    public List<Id<Pot>> pottedOrMoved(Journal before) {
        return edits.stream()
                .flatMap(Step::eventPut)
                .filter(event -> !before.events().contains(event.id()))
                .filter(event -> event.what() instanceof Happening.Potted || event.what() instanceof Happening.Moved)
                .flatMap(event -> event.subject().asPot().stream())
                .distinct()
                .toList();
    }

    private static Stream<Event> eventPut(Edit edit) {
        return edit instanceof Edit.Put && edit.entity() instanceof Event event ? Stream.of(event) : Stream.empty();
    }

    @Override
    public <R> R fold(Function<Step, R> step, Function<Refusal, R> refusal) {
        return step.apply(this);
    }
}
