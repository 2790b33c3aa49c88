// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What is kept of a fault of the program: where it happened, but no message, since those may quote the journal. */
final class CrashReport {
    private CrashReport() {}

    /** Writes the report for the owner alone, and gives its place; empty where that cannot be written. */
    static Optional<Path> write(Path folder, Throwable fault) {
        try {
            createForOwner(folder);
            Path file = Files.createTempFile(folder, "crash-", ".txt");
            Files.write(file, lines(fault));
            return Optional.of(file);
        } catch (IOException | UnsupportedOperationException unwritable) {
            return Optional.empty();
        }
    }

    private static void createForOwner(Path folder) throws IOException {
        Files.createDirectories(
                folder, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
    }

    static List<String> lines(Throwable fault) {
        List<String> lines = new ArrayList<>();
        lines.add("Java " + Runtime.version() + ", " + System.getProperty("os.name") + " "
                + System.getProperty("os.arch"));
        Set<Throwable> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        for (@Nullable Throwable cause = fault; cause != null && seen.add(cause); cause = cause.getCause()) {
            lines.add(cause.getClass().getName());
            for (StackTraceElement element : cause.getStackTrace()) {
                lines.add("    at " + element);
            }
        }
        return lines;
    }
}
