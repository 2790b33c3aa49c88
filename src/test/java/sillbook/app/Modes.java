// SPDX-License-Identifier: Apache-2.0
package sillbook.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;

/** Who may do what with the files and folders below one. */
final class Modes {
    private Modes() {}

    /** A line for each: {@code rwx------ data}. */
    static List<String> below(Path folder) {
        try (Stream<Path> paths = Files.walk(folder)) {
            return paths.filter(path -> !path.equals(folder))
                    .map(path -> mode(path) + " " + folder.relativize(path))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String mode(Path path) {
        try {
            return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
