// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import sillbook.model.Journal;
import sillbook.model.KeptWindow;
import sillbook.store.DaySums;
import sillbook.store.Storage;
import sillbook.store.Store;
import sillbook.store.StoreException;

/** Journals as SQLite files. */
public final class SqliteStorage implements Storage {
    private final Schema schema;
    private final DaySums sums;

    /**
     * Keeps the database's native library in this folder, from one start to the next.
     *
     * @param sums how what is read comes to sums of days
     */
    public SqliteStorage(Path cache, DaySums sums) {
        this(Schema.CURRENT, sums);
        NativeLibrary.unpackInto(cache);
    }

    SqliteStorage(Schema schema, DaySums sums) {
        this.schema = schema;
        this.sums = sums;
    }

    @Override
    public boolean has(Path file) {
        return Files.exists(file);
    }

    @Override
    public Found probe(Path file) {
        if (!has(file)) {
            return Found.NOTHING;
        }
        if (!Files.isRegularFile(file) || file.toFile().length() == 0) {
            throw new StoreException.NotADatabase(file, null);
        }
        try (Database database = Database.open(file, quietAccess(file))) {
            return probe(database);
        }
    }

    private Found probe(Database database) {
        int version = schema.versionOf(database);
        if (isInUse(database.file())) {
            requireSound(database);
        }
        return version < schema.version() ? Found.EARLIER_JOURNAL : Found.JOURNAL;
    }

    /**
     * A file in use may have been left by a crash, and is looked through before it is trusted; its readings only when the first picture stands
     * ({@link Store#lookThrough}).
     */
    private static void requireSound(Database database) {
        Failures.requireNone(database.file(), Verification.ofFileQuickly(database));
    }

    private static Access quietAccess(Path file) {
        return isInUse(file) ? Access.READ : Access.LOOK;
    }

    private static boolean isInUse(Path file) {
        return Files.exists(file.resolveSibling(file.getFileName() + "-wal"));
    }

    @Override
    public Store open(Path file) {
        boolean wasInUse = isInUse(file);
        Found found = probe(file);
        if (found == Found.NOTHING) {
            throw new StoreException.Missing(file);
        }
        boolean readOnly = !Files.isWritable(file)
                || !Files.isWritable(file.toAbsolutePath().resolveSibling(""));
        return readOnly ? openReadOnly(file, found, wasInUse) : openForWriting(file, found, wasInUse);
    }

    private Store openReadOnly(Path file, Found found, boolean wasInUse) {
        if (found == Found.EARLIER_JOURNAL) {
            throw new StoreException.ReadOnly(file, null);
        }
        return new SqliteStore(Database.open(file, quietAccess(file)), true, wasInUse, sums);
    }

    private Store openForWriting(Path file, Found found, boolean wasInUse) {
        Database database = Database.open(file, Access.WRITE);
        try {
            database.first("PRAGMA journal_mode = WAL", Row::text);
            if (found == Found.EARLIER_JOURNAL) {
                schema.bringUpToDate(database);
            }
            return new SqliteStore(database, false, wasInUse, sums);
        } catch (RuntimeException | Error failure) {
            database.close();
            throw failure;
        }
    }

    @Override
    public Store begin(Path file, Journal content, List<KeptWindow> kept) {
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new StoreException.AlreadyThere(file);
        }
        Draft.begin(file, draft -> write(draft, content, kept));
        return open(file);
    }

    private void write(Path draft, Journal content, List<KeptWindow> kept) {
        try (Database database = Database.open(draft, Access.WRITE)) {
            schema.create(database);
            Content written = new Content(database);
            database.transaction(() -> {
                content.entities().forEach(written::put);
                DayReads days = new DayReads(database, written, new Readings(database), sums);
                days.readPlaces().forEach(days::rebuild);
                new KeptWindows(database).keepFromTheFirst(kept);
                return draft;
            });
            database.first("PRAGMA journal_mode = WAL", Row::text);
        }
    }
}
