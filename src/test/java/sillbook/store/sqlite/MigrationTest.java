// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.app.DayReckoning;
import sillbook.model.Journal;
import sillbook.store.Backups;
import sillbook.store.Storage.Found;
import sillbook.store.Store;
import sillbook.store.StoreException;

/** A journal of an earlier form is brought up to date, or left as it was. */
class MigrationTest {
    private static final Schema SECOND = new Schema(List.of("001-journal.sql", "test-002-pest.sql"));
    private static final SqliteStorage LATER = new SqliteStorage(SECOND, new DayReckoning());

    @TempDir
    private Path folder;

    private Path file;
    private Journal content;

    @BeforeEach
    void begin() {
        file = Journals.full(folder.resolve("journal.sillbook"));
        try (Store store = Journals.STORAGE.open(file)) {
            content = store.read().journal();
        }
    }

    @Test
    void bringsAJournalUpToDateAfterABackup() throws IOException {
        assertThat(LATER.probe(file)).isEqualTo(Found.EARLIER_JOURNAL);

        LATER.open(file).close();

        assertThat(LATER.probe(file)).isEqualTo(Found.JOURNAL);
        Path backup = Backups.of(file).ofForm(1);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(backup)))
                .isEqualTo("rw-------");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(backup.getParent())))
                .isEqualTo("rwx------");
        try (Store store = Journals.STORAGE.open(backup)) {
            assertThat(store.read().journal()).isEqualTo(content);
        }
        assertThatThrownBy(() -> Journals.STORAGE.open(file))
                .isInstanceOf(StoreException.Newer.class)
                .hasMessageContaining("its form is 2, and this one knows up to 1");
    }

    @Test
    void comesToWhatANewJournalIs() {
        Path fresh = folder.resolve("fresh.sillbook");
        LATER.begin(fresh, content).close();
        LATER.open(file).close();

        assertThat(schema(file)).isEqualTo(schema(fresh));
        try (Store migrated = LATER.open(file);
                Store begun = LATER.open(fresh)) {
            assertThat(migrated.dump()).isEqualTo(begun.dump());
            assertThat(migrated.verify()).isEmpty();
        }
    }

    private static List<String> schema(Path file) {
        try (Database database = Database.open(file, Access.READ)) {
            return database.list(
                    "SELECT name || ': ' || sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY name", Row::text);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"test-002-broken.sql", "test-002-dangling.sql"})
    void aStepThatFailsLeavesTheJournalAsItWas(String script) {
        SqliteStorage failing = new SqliteStorage(new Schema(List.of("001-journal.sql", script)), new DayReckoning());

        for (int attempt = 0; attempt < 2; attempt++) {
            assertThatThrownBy(() -> failing.open(file))
                    .isInstanceOf(StoreException.NotBroughtUpToDate.class)
                    .hasMessageContaining(Backups.of(file).ofForm(1).toString());
        }

        try (Store store = Journals.STORAGE.open(file)) {
            assertThat(store.read().journal()).isEqualTo(content);
            assertThat(store.verify()).isEmpty();
        }
    }

    @Test
    void isNotStartedWithoutABackup() throws IOException {
        Files.writeString(Backups.of(file).folder(), "not a folder");

        assertThatThrownBy(() -> LATER.open(file)).isInstanceOf(StoreException.Failed.class);

        assertThat(LATER.probe(file)).isEqualTo(Found.EARLIER_JOURNAL);
    }

    @Test
    void anotherWindowMayHaveDoneIt() {
        try (Database database = Database.open(file, Access.WRITE)) {
            LATER.open(file).close();
            SECOND.bringUpToDate(database);
            assertThat(SECOND.versionOf(database)).isEqualTo(2);
        }
    }
}
