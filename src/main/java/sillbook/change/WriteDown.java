// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import sillbook.model.Catalogue;
import sillbook.model.Container;
import sillbook.model.Edit;
import sillbook.model.Entity;
import sillbook.model.Event;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Outcome;
import sillbook.model.OwnKind;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.PottingMix;
import sillbook.model.SeasonPlan;
import sillbook.model.Space;
import sillbook.model.Thermometer;
import sillbook.model.Trench;
import sillbook.model.UsualWay;
import sillbook.model.Variety;

/**
 * An entry is written down, or takes the place of the one with its id: a variety, purchase, potting mix, container,
 * usual way, place, ground, own figure, wish, outcome, the settings, or a pot's own facts. Events have changes of their own.
 */
public record WriteDown(Entity<?> entity) implements Change {
    public WriteDown {
        if (entity instanceof Event) {
            throw new IllegalArgumentException("an event is corrected, not written down: " + entity);
        }
    }

    @Override
    public Stream<? extends Id<?>> names() {
        return entity.refersTo();
    }

    @Override
    public Decision decide(Journal journal, Hand hand) {
        return refusal(journal)
                .<Decision>map(refusal -> refusal)
                .orElseGet(() -> new Step(name(journal), List.of(new Edit.Put(entity))));
    }

    private String name(Journal journal) {
        return Said.entity(journal, entity) + (journal.contains(entity.id()) ? " corrected" : " written down");
    }

    private Optional<Refusal> refusal(Journal journal) {
        if (entity instanceof Variety variety) {
            return taken(journal.varieties(), variety, one -> one.kind().name() + " '" + one.name() + "'");
        }
        if (entity instanceof Place place) {
            return taken(journal.places(), place, one -> "place " + one.name());
        }
        if (entity instanceof OwnKind kind) {
            return taken(journal.ownKinds(), kind, one -> "kind " + one.name());
        }
        if (entity instanceof PottingMix mix) {
            return taken(journal.pottingMixes(), mix, one -> "potting mix " + one.name());
        }
        if (entity instanceof Container container) {
            return taken(journal.containers(), container, one -> "container " + one.name());
        }
        if (entity instanceof UsualWay way) {
            return taken(journal.usualWays(), way, one -> "usual way " + one.name());
        }
        if (entity instanceof Trench trench) {
            return taken(journal.trenches(), trench, one -> "ground of " + Said.place(journal, one.place()));
        }
        if (entity instanceof Space space) {
            return taken(journal.spaces(), space, one -> Said.entity(journal, one));
        }
        if (entity instanceof SeasonPlan plan) {
            return taken(journal.seasonPlans(), plan, one -> Said.entity(journal, one));
        }
        if (entity instanceof Thermometer thermometer) {
            return taken(journal.thermometers(), thermometer, one -> Said.entity(journal, one));
        }
        if (entity instanceof Outcome outcome) {
            return Rules.planted(journal, List.of(outcome.pot()), outcome.variety());
        }
        return entity instanceof Pot pot ? labelTaken(journal, pot) : Optional.empty();
    }

    /** What is called by its name has it to itself. */
    private static <T extends Entity<T>> Optional<Refusal> taken(
            Catalogue<T> known, T entity, Function<T, String> name) {
        return known.all().stream()
                .filter(other -> !other.id().equals(entity.id()))
                .map(name)
                .filter(name.apply(entity)::equalsIgnoreCase)
                .findFirst()
                .flatMap(other ->
                        Rules.refuse("There is a " + other + " already. Open that one, or write another name."));
    }

    private static Optional<Refusal> labelTaken(Journal journal, Pot pot) {
        return Optional.of(pot.label())
                .filter(label -> !label.isBlank())
                .flatMap(label -> journal.pot(pot.season(), label))
                .filter(other -> !other.id().equals(pot.id()))
                .flatMap(other -> Rules.refuse("The label " + other.label() + " is taken in season "
                        + journal.nameOf(pot.season()) + ". Write another."));
    }
}
