// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.List;
import java.util.Optional;
import sillbook.model.Edit;
import sillbook.model.Entity;
import sillbook.model.Event;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Purchase;
import sillbook.model.Variety;

/**
 * An entry is written down, or takes the place of the one with its id: a variety, purchase, potting mix, container,
 * place, own figure, wish, outcome, the settings, or a pot's own facts. Events have changes of their own.
 */
public record WriteDown(Entity<?> entity) implements Change {
    public WriteDown {
        if (entity instanceof Event) {
            throw new IllegalArgumentException("an event is corrected, not written down: " + entity);
        }
    }

    @Override
    public Decision on(Journal journal, Hand hand) {
        return refusal(journal)
                .<Decision>map(refusal -> refusal)
                .orElseGet(() -> new Step(name(journal), List.of(new Edit.Put(entity))));
    }

    private String name(Journal journal) {
        boolean known = journal.entities().stream()
                .anyMatch(other ->
                        other.getClass().equals(entity.getClass()) && other.id().equals(entity.id()));
        return Said.entity(journal, entity) + (known ? " corrected" : " written down");
    }

    private Optional<Refusal> refusal(Journal journal) {
        if (entity instanceof Variety variety) {
            return nameTaken(journal, variety);
        }
        if (entity instanceof Place place) {
            return nameTaken(journal, place);
        }
        if (entity instanceof Pot pot) {
            return labelTaken(journal, pot);
        }
        if (entity instanceof Purchase purchase && !journal.varieties().contains(purchase.variety())) {
            return Rules.refuse("The variety of this purchase is no longer in the journal. Choose it again.");
        }
        return Optional.empty();
    }

    private static Optional<Refusal> nameTaken(Journal journal, Variety variety) {
        return journal.varieties().all().stream()
                .filter(other -> !other.id().equals(variety.id()))
                .filter(other -> other.name().equalsIgnoreCase(variety.name())
                        && other.kind().name().equals(variety.kind().name()))
                .findFirst()
                .flatMap(other -> Rules.refuse("There is a " + other.kind().name() + " '" + other.name()
                        + "' already. Open it in Bulbs, or write another name."));
    }

    private static Optional<Refusal> nameTaken(Journal journal, Place place) {
        return journal.places().all().stream()
                .filter(other -> !other.id().equals(place.id()) && other.name().equalsIgnoreCase(place.name()))
                .findFirst()
                .flatMap(other -> Rules.refuse(
                        "There is a place " + other.name() + " already. Open it in Places, or write another name."));
    }

    private static Optional<Refusal> labelTaken(Journal journal, Pot pot) {
        return journal.pot(pot.season(), pot.label())
                .filter(other -> !other.id().equals(pot.id()))
                .flatMap(other -> Rules.refuse("The label " + other.label() + " is taken in season "
                        + pot.season().name(journal.settings().seasonStart()) + ". Write another."));
    }
}
