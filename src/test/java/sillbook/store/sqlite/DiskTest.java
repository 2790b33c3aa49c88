// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import sillbook.app.DayReckoning;
import sillbook.change.Step;
import sillbook.model.Edit;
import sillbook.store.Snapshot;
import sillbook.store.Store;
import sillbook.store.StoreException;

/** Disks that are full, or that may not be written. */
class DiskTest {
    /** Too much for the disk. */
    private static final Step LARGE = large();

    @TempDir
    private Path folder;

    private static Step large() {
        return new Step(
                "much",
                IntStream.range(0, 2_000)
                        .mapToObj(number -> Journals.variety(number, "long words".repeat(50)))
                        .<Edit>map(Edit.Put::new)
                        .toList());
    }

    private Path file() {
        return folder.resolve("journal.sillbook");
    }

    @Test
    void aFullDiskKeepsWhatWasThere() {
        try (SmallDisk disk = SmallDisk.on(folder)) {
            Journals.STORAGE.begin(file(), Journals.EMPTY).close();
            try (Store store = Journals.STORAGE.open(file())) {
                Journals.commit(store, 1);
                Snapshot before = store.read();

                assertThatThrownBy(() -> store.commit(store.revision(), LARGE, List.of(), Journals.NOW))
                        .isInstanceOf(StoreException.DiskFull.class)
                        .hasMessageContaining("Make room");

                assertThat(store.read()).isEqualTo(before);
                assertThat(store.verify()).isEmpty();
                Journals.commit(store, 2);
                assertThat(store.steps(0, 9).all()).isEqualTo(2);
            }
            assertThat(disk.folder()).isEqualTo(folder);
        }
    }

    /** The same where nothing can be mounted: the database is told that the file may not grow. */
    @Test
    void aFileThatCannotGrowKeepsWhatWasThere() {
        Journals.STORAGE.begin(file(), Journals.EMPTY).close();
        try (Database database = Database.open(file(), Access.WRITE)) {
            database.number("PRAGMA max_page_count = 80");
            Store store = new SqliteStore(database, false, false, Journals.SUMS);
            Journals.commit(store, 1);
            Snapshot before = store.read();

            assertThatThrownBy(() -> store.commit(store.revision(), LARGE, List.of(), Journals.NOW))
                    .isInstanceOf(StoreException.DiskFull.class);

            assertThat(store.read()).isEqualTo(before);
            assertThat(store.verify()).isEmpty();
            Journals.commit(store, 2);
            assertThat(store.steps(0, 9).all()).isEqualTo(2);
        }
    }

    @Test
    void aBackupThatDoesNotFitLeavesNothing() {
        Path small = folder.resolve("small");
        assertThat(small.toFile().mkdir()).isTrue();
        Journals.STORAGE.begin(file(), Journals.EMPTY).close();
        try (SmallDisk disk = SmallDisk.on(small);
                Store store = Journals.STORAGE.open(file())) {
            store.commit(store.revision(), LARGE, List.of(), Journals.NOW);
            Path copy = disk.folder().resolve("copy.sillbook");

            assertThatThrownBy(() -> store.backUp(copy)).isInstanceOf(StoreException.DiskFull.class);

            assertThat(small.toFile().list()).isEmpty();
            assertThat(store.verify()).isEmpty();
        }
    }

    @Test
    void aReadOnlyDiskIsReadAndNotWritten() {
        try (SmallDisk disk = SmallDisk.on(folder)) {
            Journals.STORAGE.begin(file(), Journals.EMPTY).close();
            disk.makeReadOnly();

            readsButDoesNotWrite();
            assertThatThrownBy(() -> Journals.STORAGE.begin(folder.resolve("other.sillbook"), Journals.EMPTY))
                    .isInstanceOf(StoreException.ReadOnly.class);
        }
    }

    @Test
    void aReadOnlyFolderIsReadAndNotWritten() throws IOException {
        Journals.STORAGE.begin(file(), Journals.EMPTY).close();
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-x------"));
        try {
            Assumptions.assumeFalse(Files.isWritable(folder), "root may write everywhere");
            readsButDoesNotWrite();
        } finally {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
        }
    }

    private void readsButDoesNotWrite() {
        Fingerprint before = Fingerprint.of(folder);
        try (Store store = Journals.STORAGE.open(file())) {
            assertThat(store.isReadOnly()).isTrue();
            assertThat(store.read().journal()).isEqualTo(Journals.EMPTY);
            assertThat(store.readCurrent(Journals.NOW).journal()).isEqualTo(Journals.EMPTY);
            assertThat(store.verify()).isEmpty();
            assertThatThrownBy(() -> Journals.commit(store, 1))
                    .isInstanceOf(StoreException.ReadOnly.class)
                    .hasMessageContaining("may not be written");
        }
        assertThat(Fingerprint.of(folder)).isEqualTo(before);
    }

    @Test
    void aReadOnlyJournalOfAnEarlierFormStaysAsItIs() {
        try (SmallDisk disk = SmallDisk.on(folder)) {
            Journals.STORAGE.begin(file(), Journals.EMPTY).close();
            disk.makeReadOnly();
            SqliteStorage later =
                    new SqliteStorage(new Schema(List.of("001-journal.sql", "test-002-pest.sql")), new DayReckoning());

            assertThatThrownBy(() -> later.open(file())).isInstanceOf(StoreException.ReadOnly.class);
        }
    }

    @Test
    void aReadOnlyDiskDoesNotHideWhatACrashLeft() throws IOException {
        Path whole = folder.resolve("whole");
        assertThat(whole.toFile().mkdir()).isTrue();
        Path open = Journals.full(whole.resolve("journal.sillbook"));
        Path small = folder.resolve("small");
        assertThat(small.toFile().mkdir()).isTrue();
        try (SmallDisk disk = SmallDisk.on(small)) {
            Path left = disk.folder().resolve("journal.sillbook");
            try (Store store = Journals.STORAGE.open(open)) {
                Journals.commit(store, 1);
                for (String side : List.of("", "-wal")) {
                    Files.copy(
                            open.resolveSibling(open.getFileName() + side),
                            left.resolveSibling(left.getFileName() + side));
                }
            }
            disk.makeReadOnly();

            assertThatThrownBy(() -> Journals.STORAGE.open(left)).isInstanceOf(StoreException.ReadOnly.class);
        }
    }

    @Test
    void aFileThatIsNotThereCannotBeRead() {
        assertThatThrownBy(() -> Database.open(file(), Access.READ))
                .isInstanceOf(StoreException.Failed.class)
                .hasMessage(file() + " could not be read. Look at the disk and the folder.");
    }

    static Stream<Arguments> failures() {
        return Stream.of(
                Arguments.of(new AccessDeniedException("x"), StoreException.ReadOnly.class),
                Arguments.of(
                        new FileSystemException("x", null, "Read-only file system"), StoreException.ReadOnly.class),
                Arguments.of(new IOException("No space left on device"), StoreException.DiskFull.class),
                Arguments.of(new IOException(), StoreException.Failed.class));
    }

    @ParameterizedTest
    @MethodSource("failures")
    void aFailureOfTheDiskIsToldApart(IOException failure, Class<? extends StoreException> told) {
        assertThat(Failures.of(file(), failure)).isInstanceOf(told).hasMessageContaining(file().toString());
    }
}
