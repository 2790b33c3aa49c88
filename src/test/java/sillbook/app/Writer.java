// SPDX-License-Identifier: Apache-2.0
package sillbook.app;

import java.io.InputStream;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import sillbook.change.WriteDown;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Place;
import sillbook.model.Settings;
import sillbook.model.Variety;
import sillbook.store.Delivery;
import sillbook.store.Feed;
import sillbook.store.sqlite.SqliteStorage;

/** Writes one variety after the other into a journal, and prints the name of each step when it is kept. */
final class Writer {
    static final Place CELLAR = Place.of(new Id<>(2, 1), "cellar", Place.Sort.CELLAR);

    private Writer() {}

    /** Takes the folder of the library, the journal, and the number to begin with; ends when it is killed. */
    public static void main(String[] arguments) {
        try (Book book = shelf(Path.of(arguments[0])).open(Path.of(arguments[1]))) {
            for (int number = Integer.parseInt(arguments[2]); true; number++) {
                Variety variety = Variety.of(Bookshelf.randomIds().next(), "Bluejar " + number, Kind.of("iris"));
                System.out.println(((Result.Done) book.carryOut(new WriteDown(variety))).step());
            }
        }
    }

    static Bookshelf shelf(Path cache) {
        return new Bookshelf(
                new SqliteStorage(cache, new DayReckoning()),
                Clock.systemUTC(),
                Bookshelf.randomIds(),
                (journal, pots, madeOn) -> List.of());
    }

    /** Takes readings in without end, and prints a line from time to time; ends when it is killed. */
    static final class Readings {
        private Readings() {}

        public static void main(String[] arguments) {
            try (Book book = shelf(Path.of(arguments[0])).open(Path.of(arguments[1]))) {
                Delivery endless = new Delivery(CELLAR.id(), "endless", InputStream::nullInputStream, new Endless());
                book.takeIn(endless, soFar -> {
                    System.out.println(soFar.readings());
                    return true;
                });
            }
        }
    }

    /** A reading every second. */
    private static final class Endless implements Feed {
        private int line;

        @Override
        public boolean advance() {
            line++;
            return true;
        }

        @Override
        public long at() {
            return line;
        }

        @Override
        public int milli() {
            return 4_000 + line % 3_000;
        }

        @Override
        public int line() {
            return line;
        }

        @Override
        public boolean isSuspicious() {
            return false;
        }
    }

    /** Begins a journal, writes, makes a copy and a backup, and lists what lies there; then a spare book. */
    static final class Everything {
        private Everything() {}

        public static void main(String[] arguments) {
            Path folder = Path.of(arguments[0]);
            Bookshelf shelf = shelf(folder.resolve("cache"));
            try (Book book = shelf.begin(folder.resolve("data/journal.sillbook"))) {
                book.carryOut(new WriteDown(Variety.of(Bookshelf.randomIds().next(), "Bluejar", Kind.of("iris"))));
                book.backUpOnceADay();
                book.backUp(folder.resolve("copies/copy.sillbook"));
                Book spare = shelf.spare(
                        Journal.empty(Settings.initial(Clock.systemUTC().getZone())), List.of());
                System.out.println(spare.file());
                Modes.below(folder).forEach(System.out::println);
                Modes.below(spare.file().resolveSibling("")).forEach(System.out::println);
            }
        }
    }
}
