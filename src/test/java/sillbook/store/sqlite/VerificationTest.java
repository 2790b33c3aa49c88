// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.store.Store;

/** Each kind of damage is found and said. */
class VerificationTest {
    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void begin() {
        file = folder.resolve("journal.sillbook");
        Journals.full(file);
        try (Store store = Journals.STORAGE.open(file)) {
            Journals.commit(store, 1);
            Journals.commit(store, 2);
        }
    }

    private List<String> findings() {
        try (Database database = Database.open(file, Access.WRITE);
                Store store = new SqliteStore(database, false, false, Journals.SUMS)) {
            return store.verify();
        }
    }

    @Test
    void findsNothingWhenAllIsWell() {
        assertThat(findings()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', textBlock = """
            UPDATE pot SET label = 'T3', season = 2026 WHERE rowid IN (SELECT rowid FROM pot LIMIT 2) | The label T3 is given to 2 pots of the season that begins in 2026.
            UPDATE pot SET label = iif(rowid % 2, 't3', 'T3'), season = 2026 WHERE rowid < 3          | pots of the season that begins in 2026.
            DELETE FROM planting WHERE pot = (SELECT pot FROM planting LIMIT 1)                       | Nothing is planted in the pot
            UPDATE pot SET parent = id WHERE rowid = (SELECT rowid FROM pot LIMIT 1)                  | which is not of an earlier season.
            UPDATE step SET taken_back = number = 1                                                   | The step 'step 2' is in force, though one before it is taken back.
            DELETE FROM settings                                                                      | The settings are missing.
            DELETE FROM place                                                                         | names one of place that is not there.
            INSERT INTO kept_window VALUES (1, NULL, 'x', 'COLD', '2026-10-01', '2027-01-02', '2027-01-01', '2027-01-03', '') | A kept window of 2026-10-01 is not in order
            UPDATE settings SET zone = 'Atlantis'                                                     | makes no sense
            PRAGMA ignore_check_constraints = ON; UPDATE outcome SET score = 9                        | The file is damaged: CHECK constraint failed in outcome.
            PRAGMA writable_schema = ON; DELETE FROM sqlite_schema WHERE name = 'event_of_pot'        | The file is damaged:
            """)
    void findsDamage(String damage, String finding) {
        Journals.tamper(file, damage);

        assertThat(findings()).anyMatch(sentence -> sentence.contains(finding));
    }

    @Test
    void findsSpoiltPages() throws IOException {
        long page = pageOf("event");
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            byte[] spoilt = "spoilt by the damp".repeat(200).getBytes(StandardCharsets.US_ASCII);
            channel.write(ByteBuffer.wrap(spoilt), (page - 1) * 4096);
        }
        assertThat(findings()).isNotEmpty().allMatch(sentence -> sentence.contains("damaged"));
    }

    private long pageOf(String table) {
        try (Database database = Database.open(file, Access.LOOK)) {
            return database.number("SELECT max(pageno) FROM dbstat WHERE name = ?", table);
        }
    }
}
