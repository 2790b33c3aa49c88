// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.util.List;
import sillbook.model.Id;
import sillbook.model.Place;

/**
 * The other side of a step that took readings in, or out again: while it is in force the readings it changed or took out, as they were; while
 * it is taken back those it brought. Going over the step exchanges the two, as sets.
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

    /** What a step took in, or out. */
    private record TakenIn(long place, long source, WrongSums.Stretch stretch) {}

    /** Keeps a reading as it is before the step changes it; not one that the step itself brought. */
    void keep(long step, long place, long at, long ownSource) {
        database.update(KEEP, step, place, at, ownSource);
    }

    /** Gives the stretches over which readings are others than before; none for a step that took none in, and none out. */
    List<WrongSums.Stretch> goOver(long step) {
        List<TakenIn> taken = database.list(
                OF_STEP,
                row -> {
                    Id<Place> place = row.id();
                    return new TakenIn(
                            row.large(), row.large(), new WrongSums.Stretch(place, row.large(), row.large()));
                },
                step);
        if (!taken.isEmpty()) {
            exchange(step, taken);
        }
        return taken.stream().map(TakenIn::stretch).toList();
    }

    private void exchange(long step, List<TakenIn> taken) {
        database.run("DROP TABLE IF EXISTS temp.crossing");
        database.run(
                "CREATE TEMP TABLE crossing (place, at, temperature, source, line, flags, PRIMARY KEY (place, at)) WITHOUT ROWID");
        database.update(LIFT, step);
        database.update("DELETE FROM step_reading WHERE step = ?", step);
        for (TakenIn one : taken) {
            long from = one.stretch().from();
            long to = one.stretch().to();
            database.update(LAY_ASIDE, step, one.place(), from, to, one.source());
            database.update(CLEAR, step, one.place(), from, to);
        }
        database.update(SET_DOWN);
        database.run("DROP TABLE temp.crossing");
    }
}
