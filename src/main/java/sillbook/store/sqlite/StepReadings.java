// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Place;

/**
 * The other side of a step that took readings in: while it is in force the readings it changed, as they were; while it is taken back those it
 * brought. Going over the step exchanges the two, as sets.
 */
final class StepReadings {
    private static final String OF_STEP = Sql.file("queries/taken-in-by-step.sql");
    private static final String LIFT = Sql.file("queries/lift-step-readings.sql");
    private static final String LAY_ASIDE = Sql.file("queries/lay-readings-aside.sql");
    private static final String CLEAR = Sql.file("queries/clear-laid-aside.sql");
    private static final String SET_DOWN =
            "INSERT INTO reading SELECT place, at, temperature, source, line, flags FROM temp.crossing";
    private static final String KEEP = Sql.file("queries/keep-step-reading.sql");

    private final Database database;

    StepReadings(Database database) {
        this.database = database;
    }

    /** What a step took in. */
    private record TakenIn(long place, long source, WrongSums.Stretch stretch) {}

    /** Keeps a reading as it is before the step changes it; not one that the step itself brought. */
    void keep(long step, long place, long at, long ownSource) {
        database.update(KEEP, step, place, at, ownSource);
    }

    /** Gives the stretch over which readings are others than before; empty for a step that took none in. */
    Optional<WrongSums.Stretch> goOver(long step) {
        Optional<TakenIn> taken = database.first(
                OF_STEP,
                row -> {
                    Id<Place> place = row.id();
                    return new TakenIn(
                            row.large(), row.large(), new WrongSums.Stretch(place, row.large(), row.large()));
                },
                step);
        taken.ifPresent(some -> exchange(step, some));
        return taken.map(TakenIn::stretch);
    }

    private void exchange(long step, TakenIn taken) {
        database.run("DROP TABLE IF EXISTS temp.crossing");
        database.run(
                "CREATE TEMP TABLE crossing (place, at, temperature, source, line, flags, PRIMARY KEY (place, at)) WITHOUT ROWID");
        database.update(LIFT, step);
        database.update("DELETE FROM step_reading WHERE step = ?", step);
        long from = taken.stretch().from();
        long to = taken.stretch().to();
        database.update(LAY_ASIDE, step, taken.place(), from, to, taken.source());
        database.update(CLEAR, step, taken.place(), from, to);
        database.update(SET_DOWN);
        database.run("DROP TABLE temp.crossing");
    }
}
