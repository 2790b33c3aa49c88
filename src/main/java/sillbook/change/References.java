// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Catalogue;
import sillbook.model.Entity;
import sillbook.model.Journal;
import sillbook.model.OwnKind;

/** Who in the journal refers to an entry. */
final class References {
    private References() {}

    /** One that refers to it, as it is called; empty when nobody does. */
    static Optional<String> to(Journal journal, Entity<?> entity) {
        return Stream.concat(byId(journal, entity), byName(journal, entity))
                .findFirst()
                .map(user -> Said.entity(journal, user));
    }

    private static Stream<Entity<?>> byId(Journal journal, Entity<?> entity) {
        return mayRefer(journal)
                .<Entity<?>>flatMap(catalogue -> catalogue.all().stream())
                .filter(user -> user.refersTo().anyMatch(entity.id()::equals));
    }

    /** A variety names its kind, which need not be the grower's own. */
    private static Stream<Entity<?>> byName(Journal journal, Entity<?> entity) {
        return entity instanceof OwnKind kind
                ? journal.varieties().all().stream()
                        .filter(variety -> variety.kind().name().equals(kind.name()))
                        .map(variety -> variety)
                : Stream.empty();
    }

    /** Those that matter most to the grower come first. */
    private static Stream<Catalogue<?>> mayRefer(Journal journal) {
        return Stream.of(
                journal.pots(),
                journal.purchases(),
                journal.usualWays(),
                journal.ownFigures(),
                journal.outcomes(),
                journal.events(),
                journal.spanReadings(),
                journal.spotReadings(),
                journal.readingSources(),
                journal.loggerProfiles(),
                journal.thermometers(),
                journal.wishes(),
                journal.trenches(),
                journal.spaces(),
                journal.seasonPlans(),
                journal.intentions());
    }
}
