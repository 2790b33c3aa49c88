// SPDX-License-Identifier: Apache-2.0
package sillbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sillbook.app.DayReckoning;
import sillbook.store.sqlite.SqliteStorage;

/** Packaging does without the archive where this fails, so that it must not fail unnoticed. */
class WarmUpTest {
    @TempDir
    private Path folder;

    @Test
    void goesTheWaysOfAStartToTheirEnd() throws IOException {
        WarmUp.main(folder.toString());

        SqliteStorage storage = new SqliteStorage(folder.resolve("cache"), new DayReckoning());
        assertThat(storage.has(folder.resolve("warm-up.sillbook"))).isTrue();
    }
}
