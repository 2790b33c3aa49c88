// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.change.Step;
import sillbook.store.RandomEntries;
import sillbook.store.Store;
import sillbook.store.Written;

/** A journal of every form there has been is kept, and opens. */
class EarlierFormsTest {
    private static final Path KEPT = Path.of("src/test/resources/sillbook/store");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(ints = 1)
    void isStillRead(int form) throws IOException {
        Path file = folder.resolve("journal.sillbook");
        try (InputStream packed = new GZIPInputStream(Files.newInputStream(journalOf(form)))) {
            Files.copy(packed, file);
        }
        try (Store store = Journals.STORAGE.open(file)) {
            assertThat(store.dump()).isEqualTo(Files.readString(dumpOf(form)));
            assertThat(store.verify()).isEmpty();
            assertThat(store.steps(0, 0).all()).isEqualTo(3);
            assertThat(store.steps(0, 0).takenBack()).isEqualTo(1);
            assertThat(store.putBack(store.revision(), Journals.NOW)).isInstanceOf(Written.Kept.class);
            for (int step = 0; step < 3; step++) {
                assertThat(store.takeBack(store.revision(), Journals.NOW)).isInstanceOf(Written.Kept.class);
            }
        }
    }

    private static Path journalOf(int form) {
        return KEPT.resolve("form-" + form + ".sillbook.gz");
    }

    private static Path dumpOf(int form) {
        return KEPT.resolve("form-" + form + ".txt");
    }

    /** Makes the files of the present form. Run it once when a form is released, and never again for that form. */
    static final class Keep {
        private Keep() {}

        public static void main(String[] arguments) throws IOException {
            Path folder = Files.createTempDirectory("sillbook-");
            Path file = folder.resolve("journal.sillbook");
            RandomEntries entries = new RandomEntries(1);
            try (Store store = Journals.STORAGE.begin(file, entries.journal(60))) {
                for (int step = 0; step < 3; step++) {
                    Step next = entries.step(store.read().journal());
                    store.commit(store.revision(), next, List.of(entries.window(entries.id())), Journals.NOW);
                }
                store.takeBack(store.revision(), Journals.NOW);
                Files.writeString(dumpOf(Schema.CURRENT.version()), store.dump(), StandardCharsets.UTF_8);
            }
            try (OutputStream packed =
                    new GZIPOutputStream(Files.newOutputStream(journalOf(Schema.CURRENT.version())))) {
                Files.copy(file, packed);
            }
        }
    }
}
