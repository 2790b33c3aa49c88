// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import sillbook.app.DayReckoning;
import sillbook.change.Step;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Settings;
import sillbook.model.Variety;
import sillbook.store.DaySums;
import sillbook.store.RandomEntries;
import sillbook.store.Storage;
import sillbook.store.Store;

/** Journals to try things on. */
final class Journals {
    static final Instant NOW = Instant.parse("2027-01-12T08:41:00Z");
    static final Journal EMPTY = Journal.empty(Settings.initial(ZoneOffset.UTC));
    static final DaySums SUMS = new DayReckoning();
    static final Storage STORAGE = new SqliteStorage(Schema.CURRENT, SUMS);

    private Journals() {}

    /** A closed file that says something about everything. */
    static Path full(Path file) {
        STORAGE.begin(file, new RandomEntries(5).journal(300)).close();
        return file;
    }

    /** A step that writes down one more variety. */
    static Step step(int number) {
        return new Step("step " + number, List.of(new Edit.Put(variety(-number, ""))));
    }

    static Variety variety(int number, String note) {
        Variety plain = Variety.of(new Id<>(99, number), "Bluejar " + number, Kind.of("iris"));
        return new Variety(
                plain.id(),
                plain.name(),
                "",
                plain.kind(),
                plain.height(),
                plain.bloomSeason(),
                "",
                plain.scent(),
                plain.packetForcing(),
                plain.forPots(),
                note);
    }

    static void commit(Store store, int number) {
        store.commit(store.revision(), step(number), List.of(), NOW);
    }

    /** Does something to the file as another program could. */
    static void tamper(Path file, String sql) {
        try (Database database = Database.open(file, Access.WRITE)) {
            database.run("PRAGMA foreign_keys = OFF");
            database.run(sql);
        }
    }
}
