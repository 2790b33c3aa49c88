// SPDX-License-Identifier: Apache-2.0
package sillbook.benchmark;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import sillbook.app.Book;
import sillbook.app.Bookshelf;
import sillbook.app.DayReckoning;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Settings;
import sillbook.store.Delivery;
import sillbook.store.Progress;
import sillbook.store.sqlite.SqliteStorage;

/**
 * How long a million readings take from a file into the journal, beside the database's own command line that puts the same file into columns of text; and what ten million in the
 * journal do to the first picture and to a chart.
 */
record ReadingsSpeed(String program, Path folder) {
    private static final Place CELLAR = Place.of(new Id<>(2, 1), "cellar", Place.Sort.CELLAR);
    private static final Instant FIRST = Instant.parse("2024-10-01T00:00:00Z");
    private static final int MINUTE = 60;
    private static final int MILLION = 1_000_000;
    private static final int RUNS = 5;
    private static final int FRAMES = 15;
    private static final int COLUMNS = 120;
    private static final Duration SEASON = Duration.ofDays(210);

    /** The figures, a line each. */
    String measure(Path tenSeasons) throws IOException {
        return intake() + "\n" + tenMillion(tenSeasons);
    }

    private String intake() throws IOException {
        Path file = folder.resolve("million.csv");
        InventedReadings.write(file, new InventedReadings(FIRST, MINUTE, MILLION));
        Path empty = folder.resolve("empty.sillbook");
        shelf().begin(empty, Journal.of(List.of(Settings.initial(ZoneId.of("Europe/London")), CELLAR)))
                .close();
        Sample own = new Sample();
        Sample peer = new Sample();
        IntakeShares shares = new IntakeShares(program, folder);
        long memory = 0;
        for (int run = 0; run <= RUNS; run++) {
            Path journal = Files.copy(empty, folder.resolve("taken.sillbook"), StandardCopyOption.REPLACE_EXISTING);
            String taking = program + " --journal " + journal + " import " + file + " --place cellar";
            Timed whole = timed(taking);
            Timed theirs = timed(
                    "rm -f peer.db; sqlite3 peer.db -cmd '.mode csv' 'CREATE TABLE reading (at TEXT, celsius TEXT)'"
                            + " '.import million.csv reading'");
            long[] parts = shares.run(empty, file);
            if (run > 0) {
                shares.add(whole.nanos(), parts);
                own.add(whole.nanos());
                peer.add(theirs.nanos());
                memory = Math.max(memory, whole.kilobytes());
            }
        }
        return String.format(
                Locale.ROOT,
                "readings        %s%n  of it         %s%n  sqlite3       %s%n  ratio         %.2f%n  peak memory   %.0f MiB%n  in the file   %.1f bytes a reading, the original with it",
                own.say(),
                shares.say(),
                peer.say(),
                own.medianMillis() / peer.medianMillis(),
                memory / 1024.0,
                (Files.size(folder.resolve("taken.sillbook")) - Files.size(empty)) / (double) MILLION);
    }

    private record Timed(long nanos, long kilobytes) {}

    /** The time of a whole process, and how much memory it held at most (Debian: time). */
    private Timed timed(String command) throws IOException {
        Path memory = folder.resolve("memory");
        long begin = System.nanoTime();
        Process process = new ProcessBuilder("/usr/bin/time", "-f", "%M", "-o", memory.toString(), "sh", "-c", command)
                .directory(folder.toFile())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        String said = new String(process.getErrorStream().readAllBytes(), UTF_8);
        try {
            if (process.waitFor() != 0) {
                throw new IOException(command + " failed: " + said);
            }
        } catch (InterruptedException stopped) {
            throw new IOException(stopped);
        }
        return new Timed(
                System.nanoTime() - begin,
                Long.parseLong(Files.readString(memory).strip()));
    }

    private Bookshelf shelf() {
        return new Bookshelf(
                new SqliteStorage(folder.resolve("cache"), new DayReckoning()),
                Clock.systemUTC(),
                Bookshelf.randomIds(),
                (content, pots, day) -> List.of());
    }

    private String tenMillion(Path tenSeasons) throws IOException {
        Path full = Files.copy(tenSeasons, folder.resolve("ten-million.sillbook"));
        Sample near = new Sample();
        Sample season = new Sample();
        try (Book book = shelf().open(full)) {
            Place place = book.readAll().places().all().iterator().next();
            Instant now = book.now();
            Instant first = now.minusSeconds(30L * 10 * MILLION);
            book.takeIn(
                    new Delivery(
                            place.id(),
                            "ten million",
                            InputStream::nullInputStream,
                            new InventedReadings(first, 30, 10 * MILLION)),
                    Progress.UNWATCHED);
        }
        try (Book book = shelf().open(full)) {
            Place place = book.journal().places().all().iterator().next();
            for (int run = 0; run < FRAMES; run++) {
                season.add(chart(book, place, SEASON));
                near.add(chart(book, place, Duration.ofDays(30)));
            }
        }
        return String.format(
                Locale.ROOT,
                "ten million     %s%n  a season      %s%n  a month       %s",
                frames(tenSeasons, full),
                season.say(),
                near.say());
    }

    private static long chart(Book book, Place place, Duration back) {
        long begin = System.nanoTime();
        book.chart(place.id(), book.now().minus(back), book.now(), COLUMNS);
        return System.nanoTime() - begin;
    }

    private String frames(Path without, Path with) {
        return frames("first frame", FirstFrame::thenLeft, without, with) + "\n  "
                + frames("after a kill", FirstFrame::thenKilled, without, with);
    }

    /** A start of the program on a journal, in nanoseconds. */
    private interface Start {
        long nanos(String program, Path journal);
    }

    /** The two in turn. How the warm-up ends is how the first that counts begins. */
    private String frames(String what, Start start, Path without, Path with) {
        Sample plain = new Sample();
        Sample full = new Sample();
        for (int run = 0; run <= FRAMES; run++) {
            long plainTime = start.nanos(program, without);
            long fullTime = start.nanos(program, with);
            if (run > 0) {
                plain.add(plainTime);
                full.add(fullTime);
            }
        }
        return String.format(
                Locale.ROOT,
                "%s %.0f ms, %.0f ms with none: ratio %.2f",
                what,
                full.medianMillis(),
                plain.medianMillis(),
                full.medianMillis() / plain.medianMillis());
    }
}
