// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import sillbook.store.Backups;
import sillbook.store.Store;
import sillbook.store.StoreException;

/** What is no journal is refused in a sentence, and stays as it is, byte for byte, with nothing new beside it. */
class RefusalTest {
    @TempDir
    private Path folder;

    /** Makes a file that must be refused. */
    @FunctionalInterface
    interface Making {
        void at(Path file) throws IOException;
    }

    static Stream<Arguments> refused() {
        return Stream.of(
                refused("a text", RefusalTest::text, StoreException.NotADatabase.class, "is not a journal"),
                refused("an empty file", Files::createFile, StoreException.NotADatabase.class, "is not a journal"),
                refused("a folder", Files::createDirectory, StoreException.NotADatabase.class, "is not a journal"),
                refused("a database of others", RefusalTest::foreign, StoreException.Foreign.class, "another program"),
                refused("a later form", RefusalTest::later, StoreException.Newer.class, "its form is 7"),
                refused("no beginning", RefusalTest::beheaded, StoreException.NotADatabase.class, "its beginning"),
                refused("half a file", RefusalTest::halved, StoreException.Damaged.class, "is damaged"),
                refused("a spoilt schema", RefusalTest::spoilt, StoreException.Damaged.class, "is damaged"));
    }

    private static Arguments refused(String what, Making making, Class<? extends Exception> failure, String says) {
        return arguments(what, making, failure, says);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refused")
    void isRefusedAndLeftAsItIs(String what, Making making, Class<? extends Exception> failure, String says)
            throws IOException {
        Path file = folder.resolve("file.sillbook");
        making.at(file);
        Fingerprint before = Fingerprint.of(folder);

        assertThatThrownBy(() -> Journals.STORAGE.probe(file)).isInstanceOf(failure);
        assertThatThrownBy(() -> Journals.STORAGE.open(file))
                .isInstanceOf(failure)
                .hasMessageContaining(file.toString())
                .hasMessageContaining(says);
        assertThatThrownBy(() -> Journals.STORAGE.begin(file, Journals.EMPTY))
                .isInstanceOf(StoreException.AlreadyThere.class);

        assertThat(Fingerprint.of(folder)).isEqualTo(before);
    }

    private static void text(Path file) throws IOException {
        Files.writeString(file, "six pots of 'Marrow Lane' in the cellar\n".repeat(100));
    }

    private static void foreign(Path file) throws IOException {
        Files.createFile(file);
        Journals.tamper(file, "CREATE TABLE pot (id INTEGER); PRAGMA user_version = 1");
    }

    private static void later(Path file) {
        Journals.full(file);
        Journals.tamper(file, "PRAGMA user_version = 7");
    }

    private static void beheaded(Path file) throws IOException {
        overwrite(Journals.full(file), 0, 100);
    }

    private static void halved(Path file) throws IOException {
        truncate(Journals.full(file));
    }

    private static void truncate(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.truncate(channel.size() / 2);
        }
    }

    private static void spoilt(Path file) throws IOException {
        overwrite(Journals.full(file), 100, 3_000);
    }

    private static void overwrite(Path file, long from, int bytes) throws IOException {
        byte[] noise = new byte[bytes];
        new Random(1).nextBytes(noise);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.write(ByteBuffer.wrap(noise), from);
        }
    }

    @Test
    void tellsTheNewestBackupOfADamagedJournal() throws IOException {
        Path file = Journals.full(folder.resolve("file.sillbook"));
        Path backup = Backups.of(file).ofForm(1);
        Files.createDirectories(backup.getParent());
        Files.copy(file, backup);
        truncate(file);

        assertThatThrownBy(() -> Journals.STORAGE.open(file))
                .isInstanceOf(StoreException.Damaged.class)
                .hasMessageContaining("The newest backup is " + backup);
    }

    @Test
    void noticesDamageLeftByACrash() throws IOException {
        Path crashed = crashed(Journals.full(folder.resolve("file.sillbook")));
        overwrite(crashed, 8 * 4096L, 2_000);

        assertThatThrownBy(() -> Journals.STORAGE.open(crashed)).isInstanceOf(StoreException.Damaged.class);
    }

    /** The file as a crash leaves it, with a log beside it. */
    private Path crashed(Path file) throws IOException {
        Path crashed = folder.resolve("crashed.sillbook");
        try (var open = Journals.STORAGE.open(file)) {
            Journals.commit(open, 1);
            Files.copy(file, crashed);
            Files.copy(beside(file), beside(crashed));
        }
        return crashed;
    }

    /** There can be millions of readings, and the first picture does not wait for them. */
    @Test
    void looksThroughReadingsAfterACrashOnceItIsOpen() throws IOException {
        Path file = withReadings();
        Path crashed = crashed(file);
        overwriteReadings(crashed);

        try (Store open = Journals.STORAGE.open(crashed)) {
            assertThatThrownBy(open::lookThrough)
                    .isInstanceOf(StoreException.Damaged.class)
                    .hasMessageContaining("is damaged");
        }
    }

    @Test
    void looksThroughNoReadingsOfAFileThatWasClosed() throws IOException {
        Path file = withReadings();
        overwriteReadings(file);

        try (Store open = Journals.STORAGE.open(file)) {
            assertThatCode(open::lookThrough).doesNotThrowAnyException();
            assertThat(open.verify()).isNotEmpty();
        }
    }

    @Test
    void findsNothingInSoundReadings() throws IOException {
        Path crashed = crashed(withReadings());

        try (Store open = Journals.STORAGE.open(crashed)) {
            assertThatCode(open::lookThrough).doesNotThrowAnyException();
        }
    }

    private Path withReadings() {
        Path file = Journals.full(folder.resolve("file.sillbook"));
        Journals.tamper(
                file,
                "INSERT INTO reading WITH each (n) AS (VALUES (1) UNION ALL SELECT n + 1 FROM each WHERE n < 5000)"
                        + " SELECT 1000, n, 4000, 1, n, 0 FROM each");
        return file;
    }

    private static void overwriteReadings(Path file) throws IOException {
        long page;
        try (Database database = Database.open(file, Access.LOOK)) {
            page = database.number("SELECT rootpage FROM sqlite_schema WHERE name = 'reading'");
        }
        overwrite(file, (page - 1) * 4096, 2_000);
    }

    private static Path beside(Path file) {
        return file.resolveSibling(file.getFileName() + "-wal");
    }

    @Test
    void opensWhatACrashLeft() throws IOException {
        Path crashed = crashed(Journals.full(folder.resolve("file.sillbook")));
        try (var opened = Journals.STORAGE.open(crashed)) {
            assertThat(opened.steps(0, 1).all()).isEqualTo(1);
            assertThat(opened.verify()).isEmpty();
        }
    }
}
