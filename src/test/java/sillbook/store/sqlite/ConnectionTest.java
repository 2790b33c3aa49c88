// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.module.ModuleDescriptor.Version;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.change.Step;
import sillbook.model.Band;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.SpanReading;
import sillbook.store.Store;
import sillbook.store.StoreException;

/** How each connection is set up, and how it stands up to others. */
class ConnectionTest {
    private static final Day DAY = Day.on(LocalDate.of(2027, 1, 12));

    @TempDir
    private Path folder;

    /** Before 3.51.3 two connections to one write-ahead log could damage the file: sqlite.org/wal.html, section 11. */
    @Test
    void theLibraryIsNewEnough() {
        try (Database database = database()) {
            String version =
                    database.first("SELECT sqlite_version()", Row::text).orElseThrow();
            assertThat(Version.parse(version)).isGreaterThanOrEqualTo(Version.parse("3.51.3"));
        }
    }

    private Database database() {
        return Database.open(Journals.full(folder.resolve("journal.sillbook")), Access.WRITE);
    }

    @ParameterizedTest
    @CsvSource({
        "foreign_keys, 1",
        "trusted_schema, 0",
        "synchronous, 2",
        "busy_timeout, 5000",
        "journal_mode, wal",
        "temp_store, 2",
        "cell_size_check, 1",
        "application_id, 1399417964",
        "user_version, 1"
    })
    void isSetUp(String pragma, String expected) {
        try (Database database = database()) {
            assertThat(database.first("PRAGMA " + pragma, Row::text)).hasValue(expected);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"plain", "a b", "50% off", "what?", "#1", "a&b=c", "it's", "Gärten 日本", "file:x", "a\\b"})
    void opensWhateverTheFileIsCalled(String name) {
        Path file = folder.resolve(name);
        try (Store store = Journals.STORAGE.begin(file, Journals.EMPTY)) {
            store.backUp(folder.resolve(name + " copy"));
            assertThat(file).isRegularFile();
            assertThat(folder.resolve(name + " copy")).isRegularFile();
        }
    }

    @Test
    void leavesOneFileBehind() {
        Path file = Journals.full(folder.resolve("journal.sillbook"));
        try (Store store = Journals.STORAGE.open(file)) {
            Journals.commit(store, 1);
        }
        assertThat(folder.toFile().list()).containsExactly("journal.sillbook");
    }

    @Test
    void aStepThatCannotBeKeptLeavesNothing() {
        Path file = Journals.full(folder.resolve("journal.sillbook"));
        try (Store store = Journals.STORAGE.open(file)) {
            String before = store.dump();
            SpanReading ofNoPlace = new SpanReading(new Id<>(1, 1), new Id<>(1, 2), DAY, DAY, Band.ofCelsius(2, 9));
            Step step = new Step("a reading of no place", List.of(new Edit.Put(ofNoPlace)));
            assertThatThrownBy(() -> store.commit(store.revision(), step, List.of(), Journals.NOW))
                    .isInstanceOf(StoreException.Unfit.class);
            assertThat(store.dump()).isEqualTo(before);
        }
    }
}
