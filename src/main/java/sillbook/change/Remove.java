// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Edit;
import sillbook.model.Entity;
import sillbook.model.Event;
import sillbook.model.Id;
import sillbook.model.Intention;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.ReadingSource;
import sillbook.model.Settings;

/**
 * An entry other than a pot goes, when nothing in the journal still refers to it. With a variety its choices go; with a place its
 * shelf; with a plan, what was meant by it for pots; with a file of a thermometer, its readings.
 */
public record Remove(Entity<?> entity) implements Change {
    public Remove {
        if (entity instanceof Pot || entity instanceof Settings) {
            throw new IllegalArgumentException("pots have a change of their own, and settings stay: " + entity);
        }
    }

    @Override
    public Stream<? extends Id<?>> names() {
        return Stream.of(entity.id());
    }

    /** What it is called, as {@code place cellar}. */
    public String called(Journal journal) {
        return Said.entity(journal, entity);
    }

    /** What in the journal still refers to it, as it is called; while something does, it cannot go. */
    public Optional<String> usedBy(Journal journal) {
        List<Edit> along = along(journal).<Edit>map(Edit.Remove::new).toList();
        return References.to(journal.with(along), entity);
    }

    @Override
    public Decision decide(Journal journal, Hand hand) {
        String name = Said.entity(journal, entity);
        List<Edit> edits = Stream.concat(along(journal), Stream.of(entity))
                .<Edit>map(Edit.Remove::new)
                .toList();
        return Rules.firstOf(used(journal, name), mingledWith(journal, name), staysPotted(journal.with(edits)))
                .<Decision>map(refusal -> refusal)
                .orElseGet(() -> new Step(name + " removed", edits));
    }

    /** What has no sense without it. */
    private Stream<Entity<?>> along(Journal journal) {
        Stream<Entity<?>> choices = journal.choices().all().stream()
                .filter(choice -> choice.variety().equals(entity.id()))
                .map(choice -> choice);
        Stream<Entity<?>> intentions = Intention.by(entity.id(), journal).map(meant -> meant);
        Stream<Entity<?>> spaces = journal.spaces().all().stream()
                .filter(space -> space.place().equals(entity.id()))
                .map(space -> space);
        return Stream.of(choices, intentions, spaces).flatMap(gone -> gone);
    }

    private Optional<Refusal> used(Journal journal, String name) {
        return usedBy(journal)
                .flatMap(user -> Rules.refuse("The " + name + " is still used by " + user + ". Nothing was removed."));
    }

    private Optional<Refusal> mingledWith(Journal journal, String name) {
        return mingled(journal)
                .flatMap(other -> Rules.refuse("The " + name + " and those from " + other.name()
                        + " lie among each other, and what both had is not kept twice. Take them back by undo, the last first."
                        + " Nothing was removed."));
    }

    /** Of a file's readings, another file whose readings of the place lie among them: then neither can go by itself. */
    public Optional<ReadingSource> mingled(Journal journal) {
        return entity instanceof ReadingSource source
                ? journal.readingSources().all().stream()
                        .filter(other -> !other.id().equals(source.id())
                                && other.place().equals(source.place())
                                && !other.first().isAfter(source.last())
                                && !source.first().isAfter(other.last()))
                        .findFirst()
                : Optional.empty();
    }

    private Optional<Refusal> staysPotted(Journal after) {
        return entity instanceof Event event ? Rules.staysPotted(after, event.subject()) : Optional.empty();
    }
}
