// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import sillbook.store.DaySums;
import sillbook.store.Feed;
import sillbook.store.Progress;

/**
 * Takes readings of a place in. As long as they come in the order of time, before or after all that is there, each is put down unlooked; any other is
 * compared with what there is of its moment.
 */
final class Intake {
    private static final String EXTENT =
            "SELECT coalesce(min(at), ?), coalesce(max(at), ?) FROM reading WHERE place = ?";
    private static final String AT = "SELECT temperature, flags, source FROM reading WHERE place = ? AND at = ?";
    private static final String CHANGE =
            "UPDATE reading SET temperature = ?, flags = ?, source = ?, line = ? WHERE place = ? AND at = ?";
    private static final String INSERT = "INSERT INTO reading (place, source, at, temperature, line, flags)";
    private static final int INSERTED = 4;
    private static final int BETWEEN_ASKING = 10_000;

    private final Database database;
    private final StepReadings aside;
    private final long place;
    private final long source;
    private final long step;
    private final Counting counting = new Counting();
    private long firstThere;
    private long lastThere;
    private boolean inOrder = true;

    /** Of a moment, what the journal has of it. */
    private record There(int temperature, boolean isSuspicious, long source) {
        static There read(Row row) throws SQLException {
            return new There(row.number(), row.flag(), row.large());
        }

        /** Whether another reading of the same moment stands before it: one that is not suspicious, then the warmer. */
        boolean yieldsTo(Feed other) {
            return isSuspicious == other.isSuspicious() ? temperature < other.milli() : isSuspicious;
        }
    }

    /** It was asked to stop, and nothing of it stays. */
    static final class Stopped extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Stopped() {
            super("stopped", null, false, false);
        }

        /** What another thread works out; whoever is interrupted while waiting for it is stopped. */
        static <T> T orResult(Future<T> work) throws ExecutionException {
            try {
                return work.get();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new Stopped();
            }
        }
    }

    /**
     * @param place its short number, like that of the source
     */
    Intake(Database database, long place, long source, long step) {
        this.database = database;
        this.aside = new StepReadings(database);
        this.place = place;
        this.source = source;
        this.step = step;
    }

    /** The short number of its source. */
    long source() {
        return source;
    }

    Counting counting() {
        return counting;
    }

    /** Whether all came in the order of time, and all before or all after what was there. */
    boolean wasInOrder() {
        return inOrder && (counting.last() < firstThere || counting.first() > lastThere);
    }

    /**
     * Goes through a feed.
     *
     * @param sums is told the readings that are not suspicious as long as they come in order
     */
    void takeIn(Feed feed, DaySums.Tally sums, Progress progress) {
        database.each(EXTENT, this::extent, Long.MAX_VALUE, Long.MIN_VALUE, place);
        database.fill(INSERT, new long[] {place, source}, INSERTED, batch -> {
            long before = Long.MIN_VALUE;
            while (feed.advance()) {
                long at = feed.at();
                counting.reading(at, feed.isSuspicious());
                inOrder &= at > before && (at > lastThere || at < firstThere);
                if (inOrder) {
                    counting.fresh();
                    put(feed, batch);
                    if (!feed.isSuspicious()) {
                        sums.read(at, feed.milli());
                    }
                } else {
                    compare(feed, batch);
                }
                before = at;
                ask(progress);
            }
        });
        last(progress);
    }

    private void extent(ResultSet result) throws SQLException {
        firstThere = result.getLong(1);
        lastThere = result.getLong(2);
    }

    private void put(Feed feed, Batch batch) throws SQLException {
        batch.add(feed.at(), feed.milli(), feed.line(), feed.isSuspicious() ? 1 : 0);
    }

    private void compare(Feed feed, Batch batch) throws SQLException {
        batch.flush();
        Optional<There> there = database.first(AT, There::read, place, feed.at());
        if (there.isEmpty()) {
            counting.fresh();
            database.update(
                    INSERT + " VALUES (?, ?, ?, ?, ?, ?)",
                    place,
                    source,
                    feed.at(),
                    feed.milli(),
                    feed.line(),
                    feed.isSuspicious() ? 1 : 0);
        } else {
            compare(there.get(), feed);
        }
    }

    private void compare(There there, Feed feed) {
        boolean yields = there.yieldsTo(feed);
        if (there.temperature() == feed.milli()) {
            same(there);
        } else {
            counting.differing(feed.at(), there.temperature(), feed.milli(), feed.line(), yields);
        }
        if (yields) {
            aside.keep(step, place, feed.at(), source);
            database.update(CHANGE, feed.milli(), feed.isSuspicious() ? 1 : 0, source, feed.line(), place, feed.at());
        }
    }

    private void same(There there) {
        if (there.source() == source) {
            counting.repeated();
        } else {
            counting.known();
        }
    }

    private void ask(Progress progress) {
        if (counting.readings() % BETWEEN_ASKING == 0) {
            last(progress);
        }
    }

    private void last(Progress progress) {
        if (!progress.goesOn(counting.soFar(false))) {
            throw new Stopped();
        }
    }
}
