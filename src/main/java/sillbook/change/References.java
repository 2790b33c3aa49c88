// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Catalogue;
import sillbook.model.Entity;
import sillbook.model.Journal;

/** Who in the journal refers to an entry. */
final class References {
    private References() {}

    /** One that refers to it, as it is called; empty when nobody does. */
    static Optional<String> to(Journal journal, Entity<?> entity) {
        return mayRefer(journal)
                .<Entity<?>>flatMap(catalogue -> catalogue.all().stream())
                .filter(user -> user.refersTo().anyMatch(entity.id()::equals))
                .findFirst()
                .map(user -> Said.entity(journal, user));
    }

    /** Those that matter most to the grower come first. */
    private static Stream<Catalogue<?>> mayRefer(Journal journal) {
        return Stream.of(
                journal.pots(),
                journal.purchases(),
                journal.ownFigures(),
                journal.outcomes(),
                journal.events(),
                journal.spanReadings(),
                journal.wishes());
    }
}
