// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Container;
import sillbook.model.Entity;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.PottingMix;
import sillbook.model.Purchase;
import sillbook.model.Subject;
import sillbook.model.Variety;

/** Who in the journal refers to an entry. */
final class References {
    private References() {}

    /** One that refers to it, as it is called; empty when nobody does. */
    static Optional<String> to(Journal journal, Entity<?> entity) {
        return users(journal, entity)
                .filter(user -> !user.equals(entity))
                .findFirst()
                .map(user -> Said.entity(journal, user));
    }

    private static Stream<? extends Entity<?>> users(Journal journal, Entity<?> entity) {
        if (entity instanceof Variety variety) {
            return usersOf(journal, variety);
        }
        if (entity instanceof Place place) {
            return usersOf(journal, place);
        }
        Stream<Pot> pots = journal.pots().all().stream();
        if (entity instanceof Purchase purchase) {
            return Stream.concat(
                    pots.filter(pot -> pot.plantings().stream()
                            .anyMatch(planting -> planting.purchase().equals(Optional.of(purchase.id())))),
                    about(journal, new Subject.OfPurchase(purchase.id())));
        }
        if (entity instanceof PottingMix mix) {
            return pots.filter(pot -> pot.pottingMix().equals(Optional.of(mix.id())));
        }
        if (entity instanceof Container container) {
            return pots.filter(pot -> pot.container().equals(Optional.of(container.id())));
        }
        return Stream.empty();
    }

    private static Stream<Entity<?>> usersOf(Journal journal, Variety variety) {
        return Stream.of(
                        journal.pots().all().stream()
                                .filter(pot -> pot.plantings().stream()
                                        .anyMatch(planting -> planting.variety().equals(variety.id()))),
                        journal.purchases().all().stream()
                                .filter(purchase -> purchase.variety().equals(variety.id())),
                        journal.ownFigures().all().stream()
                                .filter(figure -> figure.scope().variety().equals(Optional.of(variety.id()))),
                        journal.outcomes().all().stream()
                                .filter(outcome -> outcome.variety().equals(Optional.of(variety.id()))),
                        about(journal, new Subject.OfVariety(variety.id())))
                .flatMap(users -> users);
    }

    private static Stream<Entity<?>> usersOf(Journal journal, Place place) {
        return Stream.of(
                        journal.events().all().stream()
                                .filter(event -> event.what() instanceof Happening.Moved moved
                                        && moved.place().equals(place.id())),
                        journal.purchases().all().stream()
                                .filter(purchase -> purchase.waits().equals(Optional.of(place.id()))),
                        journal.spanReadings().all().stream()
                                .filter(reading -> Objects.equals(reading.place(), place.id())),
                        about(journal, new Subject.OfPlace(place.id())))
                .flatMap(users -> users);
    }

    private static Stream<Event> about(Journal journal, Subject subject) {
        return journal.history(subject).stream();
    }
}
