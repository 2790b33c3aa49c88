// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import sillbook.change.Step;
import sillbook.model.ChartColumn;
import sillbook.model.Id;
import sillbook.model.KeptWindow;
import sillbook.model.Logged;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Season;
import sillbook.model.Settings;
import sillbook.store.Comparison;
import sillbook.store.DaySums;
import sillbook.store.Delivery;
import sillbook.store.Progress;
import sillbook.store.Snapshot;
import sillbook.store.Steps;
import sillbook.store.Store;
import sillbook.store.StoreException;
import sillbook.store.Written;

/** One open journal in an SQLite file. */
final class SqliteStore implements Store {
    private static final String CURRENT_POTS = Sql.file("queries/current-pots.sql");
    private static final String FIRST_DAY = Sql.file("queries/first-current-day.sql");

    /** No pot that still lives has its cold so far back. */
    private static final Duration LONGEST_COLD = Duration.ofDays(500);

    private final Database database;
    private final boolean readOnly;
    private boolean isUnlooked;
    private final Content content;
    private final StepLog steps;
    private final KeptWindows windows;
    private final WrongSums wrong;
    private final Readings readings;
    private final DayReads days;
    private final DaySums sums;

    /** @param wasInUse its readings have not been looked through after what may have been a crash */
    SqliteStore(Database database, boolean readOnly, boolean wasInUse, DaySums sums) {
        this.database = database;
        this.readOnly = readOnly;
        this.isUnlooked = wasInUse;
        this.wrong = new WrongSums(database);
        this.content = new Content(database, wrong);
        this.steps = new StepLog(database, content, wrong);
        this.windows = new KeptWindows(database);
        this.readings = new Readings(database);
        this.days = new DayReads(database, content, readings, sums);
        this.sums = sums;
    }

    @Override
    public Snapshot read() {
        return database.atOneMoment(
                () -> new Snapshot(revision(), content.read(Scope.ALL).with(days.all())));
    }

    @Override
    public Snapshot readCurrent(Instant now) {
        return database.atOneMoment(() -> {
            database.run("DROP TABLE IF EXISTS temp.current_pot");
            database.update(CURRENT_POTS, season(now).year());
            LocalDate since = database.first(
                            FIRST_DAY,
                            Row::date,
                            now.minus(LONGEST_COLD).toString().substring(0, 10))
                    .orElseThrow();
            return new Snapshot(revision(), content.read(Scope.CURRENT).with(days.since(since)));
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

    private void requireWritable() {
        if (readOnly) {
            throw new StoreException.ReadOnly(database.file(), null);
        }
    }

    private Written write(long revision, Supplier<Optional<Step>> writing) {
        requireWritable();
        wrong.clear();
        return database.transaction(() -> {
            if (revision() != revision) {
                return new Written.Stale();
            }
            return writing.get().<Written>map(this::kept).orElseGet(Written.Nothing::new);
        });
    }

    private Written.Kept kept(Step step) {
        database.update("UPDATE book SET revision = revision + 1");
        boolean readAnew = days.follow(wrong);
        return new Written.Kept(revision(), step, readAnew ? Optional.of(days.all()) : Optional.empty());
    }

    @Override
    public Written takeIn(long revision, Delivery delivery, Progress progress, Instant now) {
        Deliveries deliveries = new Deliveries(database, steps, readings, days, wrong);
        try {
            return write(
                    revision,
                    () -> Optional.of(deliveries.takeIn(delivery, progress, now).orElseThrow(Intake.Stopped::new)));
        } catch (Intake.Stopped stopped) {
            return new Written.Nothing();
        }
    }

    @Override
    public Comparison compare(Delivery delivery, Progress progress) {
        requireWritable();
        Deliveries deliveries = new Deliveries(database, steps, readings, days, new WrongSums(database));
        return database.rehearsal(() -> deliveries.compare(delivery, progress));
    }

    @Override
    public void readings(Id<Place> place, Instant from, Instant toExclusive, Consumer<Logged> taking) {
        database.atOneMoment(() -> {
            readings.each(place, from, toExclusive, taking);
            return place;
        });
    }

    @Override
    public List<ChartColumn> chart(Id<Place> place, Instant from, Instant toExclusive, int columns) {
        return database.atOneMoment(
                () -> new ChartReading(days, readings, sums, place).columns(from, toExclusive, columns));
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
    public void lookThrough() {
        if (isUnlooked) {
            Failures.requireNone(database.file(), Verification.ofReadingsQuickly(database));
            isUnlooked = false;
        }
    }

    @Override
    public List<String> verify() {
        List<String> findings = Verification.of(database);
        return findings.isEmpty() ? database.atOneMoment(days::findings) : findings;
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
