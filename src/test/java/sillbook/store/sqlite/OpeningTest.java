// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sillbook.model.Journal;
import sillbook.model.Season;
import sillbook.store.Snapshot;
import sillbook.store.Store;
import sillbook.store.TenSeasons;

/** The first screen of a large journal reads a small part of it. How long that takes is printed, not judged. */
class OpeningTest {
    @TempDir
    private Path folder;

    @Test
    void theFirstScreenReadsTheSeasonOnly() {
        Path file = folder.resolve("journal.sillbook");
        Journal content = TenSeasons.journal();
        Journals.STORAGE.begin(file, content).close();

        long start = System.nanoTime();
        try (Store store = Journals.STORAGE.open(file)) {
            long opened = System.nanoTime();
            Journal current = store.readCurrent(Journals.NOW).journal();
            long read = System.nanoTime();
            Snapshot all = store.read();
            long readAll = System.nanoTime();

            System.out.printf(
                    Locale.ROOT,
                    "%d pots, %d events: opened in %d ms, the season read in %d ms, all in %d ms%n",
                    content.pots().size(),
                    content.events().size(),
                    (opened - start) / 1_000_000,
                    (read - opened) / 1_000_000,
                    (readAll - read) / 1_000_000);
            assertThat(current.pots().all())
                    .hasSize(TenSeasons.POTS_A_SEASON)
                    .allMatch(pot -> pot.season().equals(new Season(TenSeasons.LAST_YEAR)));
            assertThat(current.events().size()).isLessThan(content.events().size() / 10);
            assertThat(all.journal()).isEqualTo(content);
        }
    }
}
