// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.change.Hand;
import sillbook.handbook.Handbook;
import sillbook.model.Ids;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Season;
import sillbook.model.Stage;
import sillbook.plan.PlanLookup;
import sillbook.season.Outlook;
import sillbook.words.DayReader;
import sillbook.words.Kinds;
import sillbook.words.Looking;

/**
 * What a line is read against.
 *
 * @param outlook of the journal, on the journal's day
 * @param ids for what the line would make
 * @param plans what seasons of the journal are planned with
 */
public record Bench(Journal journal, Outlook outlook, Handbook handbook, Ids ids, PlanLookup plans) {
    /** Of a journal of which no plan is remembered. */
    public Bench(Journal journal, Outlook outlook, Handbook handbook, Ids ids) {
        this(journal, outlook, handbook, ids, PlanLookup.of(journal, outlook));
    }

    LocalDate today() {
        return outlook.day();
    }

    Season season() {
        return journal.seasonOf(today());
    }

    DayReader days(Looking looking) {
        return new DayReader(today(), looking);
    }

    /** A hand to try a change with, at the end of today, by which all that is written of today has happened. */
    Hand hand() {
        Instant now =
                today().plusDays(1).atStartOfDay(journal.settings().zone()).toInstant();
        return new Hand(now, today(), ids);
    }

    Kinds kinds() {
        return new Kinds(journal, handbook);
    }

    Room room(Place place) {
        return new Room(outlook.standingAt(place.id()), place.room());
    }

    /** Where pots would go for a stage: the place suggested for the first of them, else any that serves it. */
    Optional<Place> suggest(List<Pot> pots, Stage stage) {
        return pots.stream()
                .findFirst()
                .flatMap(pot -> outlook.destination(pot.id(), stage))
                .map(destination -> journal.places().get(destination.place()))
                .or(() -> journal.places().all().stream()
                        .filter(place -> place.serves() == stage)
                        .findFirst());
    }
}
