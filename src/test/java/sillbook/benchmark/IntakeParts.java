// SPDX-License-Identifier: Apache-2.0
package sillbook.benchmark;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import sillbook.app.Book;
import sillbook.app.Bookshelf;
import sillbook.app.DayReckoning;
import sillbook.app.Result;
import sillbook.exchange.logger.LoggerFeed;
import sillbook.exchange.logger.LoggerFile;
import sillbook.exchange.logger.Source;
import sillbook.model.ChartColumn;
import sillbook.model.DayRead;
import sillbook.model.Id;
import sillbook.model.LoggerFormat;
import sillbook.model.Place;
import sillbook.store.DaySums;
import sillbook.store.Delivery;
import sillbook.store.Feed;
import sillbook.store.Original;
import sillbook.store.Progress;
import sillbook.store.sqlite.SqliteStorage;

/**
 * A program that takes a logger's file into a journal as {@code sillbook import} does, and says how long each part of it took. It looks at the clock at
 * every reading, so that it takes longer than the import itself.
 */
public final class IntakeParts {
    private long reading;
    private long summing;
    private long packing;

    /** When all was gone through, and the rest began. */
    private long through;

    private IntakeParts() {}

    /** Takes the folder, the journal, the file, and {@code bare} where the original is not to be kept; prints nanoseconds, parted by blanks. */
    public static void main(String... arguments) {
        boolean isBare = arguments.length > 3;
        System.out.println(
                new IntakeParts().taken(Path.of(arguments[0]), Path.of(arguments[1]), Path.of(arguments[2]), isBare));
    }

    private String taken(Path folder, Path journal, Path file, boolean isBare) {
        Bookshelf shelf = new Bookshelf(
                new SqliteStorage(folder.resolve("cache"), new Summing()),
                Clock.systemUTC(),
                Bookshelf.randomIds(),
                (content, pots, day) -> List.of());
        try (Book book = shelf.open(journal)) {
            Place place = book.readAll().places().all().iterator().next();
            Source source = Source.of(file);
            long began = System.nanoTime();
            LoggerFile found = LoggerFile.look(
                            source,
                            LoggerFormat.OPEN,
                            List.of(),
                            book.journal().settings().zone())
                    .fold(known -> known, why -> {
                        throw new IllegalStateException(why.sentence());
                    });
            long looked = System.nanoTime();
            Original original = isBare ? InputStream::nullInputStream : () -> new Packing(source.open());
            Progress progress = soFar -> {
                through = System.nanoTime();
                return true;
            };
            try (LoggerFeed feed = found.feed()) {
                Delivery delivery = new Delivery(place.id(), "a million", original, new Reading(feed));
                if (!(book.takeIn(delivery, progress) instanceof Result.Done)) {
                    throw new IllegalStateException("nothing was taken in");
                }
            }
            long ended = System.nanoTime();
            long putDown = through - looked - summing;
            return String.format(
                    Locale.ROOT,
                    "%d %d %d %d %d %d",
                    looked - began,
                    reading,
                    putDown,
                    summing,
                    packing,
                    ended - through);
        }
    }

    /** Gone through by another thread, which has ended when the readings are in. */
    private final class Reading implements Feed {
        private final Feed feed;

        Reading(Feed feed) {
            this.feed = feed;
        }

        @Override
        public boolean advance() {
            long began = System.nanoTime();
            boolean any = feed.advance();
            reading += System.nanoTime() - began;
            return any;
        }

        @Override
        public long at() {
            return feed.at();
        }

        @Override
        public int milli() {
            return feed.milli();
        }

        @Override
        public int line() {
            return feed.line();
        }

        @Override
        public boolean isSuspicious() {
            return feed.isSuspicious();
        }
    }

    private final class Summing implements DaySums {
        private final DaySums sums = new DayReckoning();

        @Override
        public Tally days(Id<Place> place, Basis basis, Consumer<DayRead> taking) {
            Tally tally = sums.days(place, basis, taking);
            return new Tally() {
                @Override
                public void read(long at, int milli) {
                    long began = System.nanoTime();
                    tally.read(at, milli);
                    summing += System.nanoTime() - began;
                }

                @Override
                public void end() {
                    tally.end();
                }
            };
        }

        @Override
        public Tally columns(
                Basis basis, Instant from, Instant toExclusive, int columns, Consumer<ChartColumn> taking) {
            return sums.columns(basis, from, toExclusive, columns, taking);
        }
    }

    /** From its opening to its end another thread reads, hashes and compresses it. */
    private final class Packing extends FilterInputStream {
        private final long began = System.nanoTime();

        Packing(InputStream in) {
            super(in);
        }

        @Override
        public void close() throws IOException {
            super.close();
            packing = System.nanoTime() - began;
        }
    }
}
