// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import sillbook.change.Step;
import sillbook.model.Id;
import sillbook.model.KeptWindow;
import sillbook.model.Pot;
import sillbook.model.Season;
import sillbook.model.Settings;
import sillbook.store.Snapshot;
import sillbook.store.Steps;
import sillbook.store.Store;
import sillbook.store.StoreException;
import sillbook.store.Written;

/** One open journal in an SQLite file. */
final class SqliteStore implements Store {
    private static final String CURRENT_POTS = Sql.file("queries/current-pots.sql");

    private final Database database;
    private final boolean readOnly;
    private final Content content;
    private final StepLog steps;
    private final KeptWindows windows;

    SqliteStore(Database database, boolean readOnly) {
        this.database = database;
        this.readOnly = readOnly;
        this.content = new Content(database);
        this.steps = new StepLog(database, content);
        this.windows = new KeptWindows(database);
    }

    @Override
    public Snapshot read() {
        return database.atOneMoment(() -> new Snapshot(revision(), content.read(Scope.ALL)));
    }

    @Override
    public Snapshot readCurrent(Instant now) {
        return database.atOneMoment(() -> {
            database.run("DROP TABLE IF EXISTS temp.current_pot");
            database.update(CURRENT_POTS, season(now).year());
            return new Snapshot(revision(), content.read(Scope.CURRENT));
        });
    }

    private Season season(Instant now) {
        Settings settings = content.read(new SettingsRows(), "").get(0);
        return Season.of(LocalDate.ofInstant(now, settings.zone()), settings.seasonStart());
    }

    @Override
    public long revision() {
        return database.number("SELECT revision FROM book");
    }

    @Override
    public boolean isReadOnly() {
        return readOnly;
    }

    @Override
    public Written commit(long revision, Step step, List<KeptWindow> foretold, Instant now) {
        return write(revision, () -> {
            windows.keep(steps.add(step, now), foretold);
            return Optional.of(step);
        });
    }

    @Override
    public Written takeBack(long revision, Instant now) {
        return write(revision, () -> steps.takeBack(now));
    }

    @Override
    public Written putBack(long revision, Instant now) {
        return write(revision, () -> steps.putBack(now));
    }

    private Written write(long revision, Supplier<Optional<Step>> writing) {
        if (readOnly) {
            throw new StoreException.ReadOnly(database.file(), null);
        }
        return database.transaction(() -> {
            if (revision() != revision) {
                return new Written.Stale();
            }
            return writing.get().<Written>map(this::kept).orElseGet(Written.Nothing::new);
        });
    }

    private Written.Kept kept(Step step) {
        database.update("UPDATE book SET revision = revision + 1");
        return new Written.Kept(revision(), step);
    }

    @Override
    public Steps steps(int from, int howMany) {
        return database.atOneMoment(() -> steps.stretch(from, howMany));
    }

    @Override
    public List<KeptWindow> keptWindows(Id<Pot> pot) {
        return windows.of(pot);
    }

    @Override
    public List<KeptWindow> keptWindows() {
        return windows.all();
    }

    @Override
    public String dump() {
        return database.atOneMoment(() -> Dump.of(database));
    }

    @Override
    public List<String> verify() {
        return Verification.of(database);
    }

    @Override
    public void backUp(Path copy) {
        Draft.begin(copy, draft -> Copy.write(database, draft));
    }

    @Override
    public void close() {
        database.close();
    }
}
