// SPDX-License-Identifier: Apache-2.0
package sillbook.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sillbook.change.WriteDown;
import sillbook.handbook.Handbook;
import sillbook.model.DaysRead;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Settings;
import sillbook.model.Variety;
import sillbook.store.Backups;
import sillbook.store.RandomEntries;
import sillbook.store.StoreException;
import sillbook.store.sqlite.SqliteStorage;

/** What a book does with a real file. */
class BookOfFileTest {
    @TempDir
    private Path folder;

    private final SetClock clock = new SetClock("2027-01-12T08:41:00Z");

    private Path file() {
        return folder.resolve("journal.sillbook");
    }

    private Bookshelf shelf() {
        Random random = new Random(3);
        return new Bookshelf(
                new SqliteStorage(folder.resolve("cache"), new DayReckoning()),
                clock,
                random::nextLong,
                Forecast.by(Handbook.standard()));
    }

    private static WriteDown writing(long number) {
        return new WriteDown(Variety.of(new Id<>(1, number), "Bluejar " + number, Kind.of("iris")));
    }

    @Test
    void takesBackAfterARestart() {
        try (Book book = shelf().begin(file())) {
            book.carryOut(writing(1));
            book.carryOut(writing(2));
            book.takeBack();
        }
        try (Book book = shelf().open(file())) {
            assertThat(book.takeBack()).isEqualTo(new Result.Done("variety 'Bluejar 1' written down", book.journal()));
            assertThat(book.journal()).isEqualTo(Journal.empty(Settings.initial(clock.getZone())));
            book.putBack();
            book.putBack();
            assertThat(book.journal().varieties().size()).isEqualTo(2);
        }
    }

    /** Both windows write from threads of their own, as fast as they can; each act is kept, once. */
    @Test
    void twoWindowsLoseNothing() throws Exception {
        shelf().begin(file()).close();
        ExecutorService threads = Executors.newFixedThreadPool(2);
        List<Future<Integer>> windows = new ArrayList<>();
        for (Callable<Integer> window : List.of(window(1_000), window(2_000))) {
            windows.add(threads.submit(window));
        }
        for (Future<Integer> window : windows) {
            assertThat(window.get()).isEqualTo(60);
        }
        threads.shutdown();
        try (Book book = shelf().open(file())) {
            assertThat(book.readAll().varieties().size()).isEqualTo(120);
            assertThat(book.steps(0, 200).stretch()).hasSize(120).doesNotHaveDuplicates();
            assertThat(book.verify()).isEmpty();
        }
    }

    private Callable<Integer> window(int first) {
        return () -> {
            int done = 0;
            try (Book book = shelf().open(file())) {
                for (int act = 0; act < 60; act++) {
                    done += book.carryOut(writing(first + act)) instanceof Result.Done ? 1 : 0;
                }
            }
            return done;
        };
    }

    @Test
    void aWindowFollowsWhatTheOtherTakesBack() {
        try (Book one = shelf().begin(file());
                Book other = shelf().open(file())) {
            one.carryOut(writing(1));
            other.carryOut(writing(2));

            assertThat(one.takeBack()).isInstanceOf(Result.Done.class);
            assertThat(other.refresh()).isTrue();
            assertThat(other.journal()).isEqualTo(one.journal());
            assertThat(other.journal().varieties().all())
                    .extracting(Variety::name)
                    .containsExactly("Bluejar 1");
        }
    }

    @Test
    void whatTheFileWillNotTakeIsSaidAndChangesNothing() throws SQLException {
        try (Book book = shelf().begin(file());
                Connection other = DriverManager.getConnection("jdbc:sqlite:" + file())) {
            book.carryOut(writing(1));
            Journal before = book.journal();
            other.createStatement().executeUpdate("BEGIN IMMEDIATE");

            assertThat(book.carryOut(writing(2)))
                    .isEqualTo(new Result.Failed(file() + " is being written by another program. Nothing was changed."
                            + " Try again in a moment."));

            assertThat(book.journal()).isEqualTo(before);
            other.createStatement().executeUpdate("ROLLBACK");
            assertThat(book.carryOut(writing(2))).isInstanceOf(Result.Done.class);
        }
    }

    @Test
    void makesOneBackupADayAndLetsOldOnesGo() {
        try (Book book = shelf().begin(file())) {
            for (int day = 0; day < 15; day++) {
                book.carryOut(writing(day));
                book.backUpOnceADay();
                book.backUpOnceADay();
                clock.pass(Duration.ofDays(1));
            }
        }
        Backups backups = Backups.of(file());
        assertThat(backups.folder().toFile().list()).hasSize(11);
        assertThat(backups.ofDay(LocalDate.of(2027, 1, 12))).isRegularFile();
        assertThat(backups.ofDay(LocalDate.of(2027, 1, 13))).doesNotExist();
        Path newest = backups.ofDay(LocalDate.of(2027, 1, 26));
        try (Book copy = shelf().open(newest)) {
            assertThat(copy.readAll().varieties().size()).isEqualTo(15);
        }
    }

    @Test
    void aCopyIsMadeWhereOneIsWanted() {
        Path copy = folder.resolve("copies/of/today.sillbook");
        try (Book book = shelf().begin(file())) {
            book.backUp(copy);
            assertThat(copy).isRegularFile();
            assertThatThrownBy(() -> book.backUp(copy)).isInstanceOf(StoreException.AlreadyThere.class);
        }
    }

    @Test
    void aSpareBookLiesApart() {
        Journal content = new RandomEntries(4).journal(40);
        try (Book spare = shelf().spare(content, List.of())) {
            assertThat(spare.readAll().with(DaysRead.NONE)).isEqualTo(content);
            assertThat(spare.file()).isRegularFile().hasFileName("spare.sillbook");
        }
    }
}
