// SPDX-License-Identifier: Apache-2.0
package sillbook.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import sillbook.change.Change;
import sillbook.change.Decision;
import sillbook.change.Hand;
import sillbook.change.Step;
import sillbook.model.ChartColumn;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.KeptWindow;
import sillbook.model.Logged;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.season.past.Settling;
import sillbook.store.Backups;
import sillbook.store.Comparison;
import sillbook.store.Delivery;
import sillbook.store.Progress;
import sillbook.store.Snapshot;
import sillbook.store.Steps;
import sillbook.store.Store;
import sillbook.store.StoreException;
import sillbook.store.Written;

/**
 * The open journal. One thread at a time reads and writes the file through it; {@link #journal()}, {@link #today()} and
 * {@link #isWhole()} may be asked from any thread at any time, without waiting, and tell what was known last.
 *
 * <p>A book opens with the current season only. {@link #readAll()} reads the rest; whatever needs it does so by itself.
 * What asks the file for something throws a {@link StoreException} when the file fails; what changes it answers with a
 * {@link Result}.
 */
public final class Book implements Page, AutoCloseable {
    private final Path file;
    private final Store store;
    private final Desk desk;
    private volatile Snapshot known;
    private volatile boolean whole;

    Book(Path file, Store store, Desk desk) {
        this.file = file;
        this.store = store;
        this.desk = desk;
        this.known = store.readCurrent(desk.now());
    }

    /** The file it is kept in. */
    public Path file() {
        return file;
    }

    /** What the journal is known to say. Until {@link #isWhole()}, closed pots of other seasons are missing. */
    public Journal journal() {
        return known.journal();
    }

    /** Whether {@link #journal()} is all of it. */
    public boolean isWhole() {
        return whole;
    }

    /** This moment, to the thousandth of a second. */
    public Instant now() {
        return desk.now();
    }

    @Override
    public LocalDate today() {
        return LocalDate.ofInstant(desk.now(), journal().settings().zone());
    }

    /** Whether nothing can be written: the file or its folder is read-only. */
    public boolean isReadOnly() {
        return store.isReadOnly();
    }

    /** Reads all of the journal, unless that is known already. */
    @Override
    public synchronized Journal readAll() {
        if (!whole) {
            readAgain();
        }
        return journal();
    }

    /** Reads again if another window wrote, and says whether one did. */
    public synchronized boolean refresh() {
        boolean behind = store.revision() != known.revision();
        if (behind) {
            readAgain();
        }
        return behind;
    }

    private void readAgain() {
        known = store.read();
        whole = true;
    }

    /** What a change would come to, without doing it. */
    public synchronized Decision decide(Change change) {
        return change.on(readAll(), new Hand(desk.now(), today(), desk.ids()));
    }

    /** Does a change: one transaction, one step. */
    @Override
    public synchronized Result carryOut(Change change) {
        return untilCurrent(() ->
                decide(change).fold(this::commit, refusal -> Optional.of(new Result.Refused(refusal.sentence()))));
    }

    private Optional<Result> commit(Step decided) {
        Step step = settled(decided);
        return follow(store.commit(known.revision(), step, foretold(step), desk.now()), "There is nothing to do.");
    }

    /** With the first that is foretold in a season is written how far its windows are to be believed. */
    private Step settled(Step step) {
        return step.pottedOrMoved(journal()).isEmpty()
                ? step
                : Settling.due(journal(), today(), store::keptWindows, desk.ids())
                        .map(windows -> step.with(new Edit.Put(windows)))
                        .orElse(step);
    }

    private List<KeptWindow> foretold(Step step) {
        List<Id<Pot>> pots = step.pottedOrMoved(journal());
        return pots.isEmpty() ? List.of() : desk.forecast().windows(journal().with(step.edits()), pots, today());
    }

    /** Takes back the last step, whichever window did it. */
    public synchronized Result takeBack() {
        return untilCurrent(
                () -> follow(store.takeBack(known.revision(), desk.now()), "There is nothing to take back."));
    }

    /** Does again what was taken back last. */
    public synchronized Result putBack() {
        return untilCurrent(() -> follow(store.putBack(known.revision(), desk.now()), "There is nothing to put back."));
    }

    /**
     * Takes readings in: one transaction, one step. What the journal has already is passed over. No other window can write while it lasts.
     *
     * @param progress may stop it, and nothing of it stays then
     */
    public synchronized Result takeIn(Delivery delivery, Progress progress) {
        if (!readAll().places().contains(delivery.place())) {
            return new Result.Refused("That place is no longer in the journal. Name another.");
        }
        return untilCurrent(() -> follow(
                store.takeIn(known.revision(), delivery, progress, desk.now()),
                "Nothing was taken in: " + delivery.name()
                        + " has no reading, was taken in for this place before, or was stopped on the way."));
    }

    /**
     * What {@link #takeIn} would do, without doing it.
     *
     * @throws StoreException when the file fails, or nothing can be written to it
     */
    public synchronized Comparison compare(Delivery delivery, Progress progress) {
        return store.compare(delivery, progress);
    }

    /** Goes through every reading of a place in a stretch of time, in the order of time; there can be millions. */
    public synchronized void readings(Id<Place> place, Instant from, Instant toExclusive, Consumer<Logged> taking) {
        store.readings(place, from, toExclusive, taking);
    }

    /** How warm a place was, in columns of equal length; those of which anything is known. */
    public synchronized List<ChartColumn> chart(Id<Place> place, Instant from, Instant toExclusive, int columns) {
        return store.chart(place, from, toExclusive, columns);
    }

    /** Tries until no other window wrote between reading and writing; each time round, one of them has got further. */
    private Result untilCurrent(Supplier<Optional<Result>> attempt) {
        try {
            readAll();
            Optional<Result> result = attempt.get();
            while (result.isEmpty()) {
                readAgain();
                result = attempt.get();
            }
            return result.get();
        } catch (StoreException failure) {
            return new Result.Failed(failure.sentence());
        }
    }

    /** Empty when what is known was stale. */
    private Optional<Result> follow(Written written, String whenNothing) {
        return written.fold(
                kept -> Optional.of(done(kept)), Optional::empty, () -> Optional.of(new Result.Refused(whenNothing)));
    }

    private Result done(Written.Kept kept) {
        Journal followed = journal().with(kept.step().edits());
        known = new Snapshot(kept.revision(), kept.days().map(followed::with).orElse(followed));
        return new Result.Done(kept.step().name(), journal());
    }

    /**
     * The journal's steps, the newest first.
     *
     * @param from how many of the newest to pass over
     */
    public synchronized Steps steps(int from, int howMany) {
        return store.steps(from, howMany);
    }

    /** What was foretold of a pot when it was potted and at each move, in that order. */
    public synchronized List<KeptWindow> keptWindows(Id<Pot> pot) {
        return store.keptWindows(pot);
    }

    /** What was foretold of all pots, in the order it was made. */
    public synchronized List<KeptWindow> keptWindows() {
        return store.keptWindows();
    }

    /** What is wrong with the file or with what it says, in sentences; empty when all is well. */
    public synchronized List<String> verify() {
        return store.verify();
    }

    /**
     * Looks through the readings of a file that a crash may have left, once.
     *
     * @throws StoreException when they are damaged
     */
    public synchronized void lookThrough() {
        store.lookThrough();
    }

    /**
     * Writes a checked copy to a file that must not exist yet.
     *
     * @throws StoreException when it cannot be written; no half of it then carries that name
     */
    public synchronized void backUp(Path copy) {
        store.backUp(copy);
    }

    /**
     * Makes the backup of the day and lets old ones go, unless there is one already or nothing can be written.
     *
     * @throws StoreException when it cannot be written
     */
    public synchronized void backUpOnceADay() {
        Backups backups = Backups.of(file);
        LocalDate today = today();
        if (!isReadOnly() && !Files.exists(backups.ofDay(today))) {
            store.backUp(backups.ofDay(today));
            backups.thinOut(journal()::seasonOf);
        }
    }

    /** Leaves one file behind, with everything in it. */
    @Override
    public synchronized void close() {
        store.close();
    }
}
