// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The database's native library lies in a folder of our own. */
class NativeLibraryTest {
    @TempDir
    private Path folder;

    @Test
    void theLibraryIsUnpackedOnceAndMendedWhenDamaged() throws IOException {
        Path cache = folder.resolve("cache");
        Path library = NativeLibrary.in(cache);
        assertThat(NativeLibrary.in(cache)).isEqualTo(library);
        byte[] whole = Files.readAllBytes(library);

        Files.write(library, new byte[] {1, 2, 3});
        assertThat(Files.readAllBytes(NativeLibrary.in(cache))).isEqualTo(whole);
        assertThat(cache.toFile().list()).hasSize(1);
    }

    @Test
    void aFolderThatCannotBeMadeIsNoHindrance() throws IOException {
        Path cache = Files.writeString(folder.resolve("cache"), "a file");

        assertThatThrownBy(() -> NativeLibrary.in(cache)).isInstanceOf(IOException.class);
        NativeLibrary.unpackInto(cache);

        Journals.STORAGE
                .begin(folder.resolve("journal.sillbook"), Journals.EMPTY)
                .close();
        assertThat(folder.resolve("journal.sillbook")).isRegularFile();
    }
}
