// SPDX-License-Identifier: Apache-2.0
package sillbook.app;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;
import sillbook.store.StoreException;

/** A folder for a journal that nobody keeps. */
final class SpareFolder {
    private SpareFolder() {}

    /** A new folder that only its owner may look into, and that goes with all that is in it when the program ends. */
    static Path untilExit() {
        try {
            Path folder = Files.createTempDirectory("sillbook-");
            Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder)));
            return folder;
        } catch (IOException e) {
            throw new StoreException.Failed(Path.of(System.getProperty("java.io.tmpdir")), "written", e);
        }
    }

    /** There is nobody left to tell if something stays. */
    private static void delete(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
        } catch (IOException e) {
            folder.toFile().delete();
        }
    }
}
