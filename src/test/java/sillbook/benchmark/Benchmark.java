// SPDX-License-Identifier: Apache-2.0
package sillbook.benchmark;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import sillbook.app.Bookshelf;
import sillbook.app.DayReckoning;
import sillbook.store.sqlite.SqliteStorage;

/**
 * Measures the packaged program in a terminal. How to run it, and what the figures mean, stands in
 * docs/explanation/benchmark.md.
 */
public final class Benchmark {
    private Benchmark() {}

    /** Takes the path of the packaged program, and {@code all} or {@code cover} for what is to be measured. */
    public static void main(String[] arguments) throws IOException {
        String program = arguments[0];
        Path folder = Files.createTempDirectory("sillbook-benchmark");
        try {
            if (arguments[1].equals("cover")) {
                System.out.println(new CoverSpeed(folder).measure());
            } else {
                measure(program, folder);
            }
        } finally {
            delete(folder);
        }
    }

    private static void measure(String program, Path folder) throws IOException {
        Path journal = folder.resolve("ten-seasons.sillbook");
        seasons(journal, InventedSeasons.TEN);
        System.out.println(new FirstFrame(program, folder).measure(journal));
        System.out.println(new KeyLatency(program, folder).measure(journal));
        Path thirty = folder.resolve("thirty-seasons.sillbook");
        seasons(thirty, InventedSeasons.THIRTY);
        System.out.println(new SeasonsSpeed(program).measure(thirty));
        System.out.println(new EffectsSpeed(folder).measure());
        System.out.println(new ReadingsSpeed(program, folder).measure(journal));
        System.out.println(new CoverSpeed(folder).measure());
        System.out.println("bytes a frame   held to 1.3 times the ideal by the tests of sillbook.ui.terminal");
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            all.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
        }
    }

    private static void seasons(Path journal, InventedSeasons.Shape shape) {
        Clock clock = Clock.systemUTC();
        Bookshelf shelf = new Bookshelf(
                new SqliteStorage(journal.resolveSibling("cache"), new DayReckoning()),
                clock,
                Bookshelf.randomIds(),
                (content, pot, day) -> List.of());
        shelf.begin(journal, InventedSeasons.until(LocalDate.now(clock), clock.getZone(), shape))
                .close();
    }
}
