// SPDX-License-Identifier: Apache-2.0
package sillbook.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the program writes is for its owner only, whatever mask of permissions it is started with. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "files have other permissions there")
class PrivacyTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"022", "000"})
    void onlyTheOwnerMayLook(String umask) throws Exception {
        List<String> printed =
                Child.start(umask, Writer.Everything.class, folder.toString()).finish();

        assertThat(printed.subList(1, printed.size()))
                .anyMatch(line -> line.endsWith("data/journal.sillbook"))
                .anyMatch(line -> line.endsWith("data/journal.sillbook-wal"))
                .anyMatch(line -> line.endsWith("data/journal.sillbook-backups"))
                .anyMatch(line -> line.endsWith("copies/copy.sillbook"))
                .anyMatch(line -> line.endsWith("spare.sillbook"))
                .anyMatch(line -> line.contains("cache/sqlite-"))
                .allMatch(line -> line.startsWith("rw-------") || line.startsWith("rwx------"));
        assertThat(Path.of(printed.get(0)).getParent())
                .as("the spare book goes when the program ends")
                .doesNotExist();
    }
}
