// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;

/** Folders that only their owner may look into, whatever the process usually allows others. */
public final class OwnerOnly {
    private static final FileAttribute<?> OWNER =
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------"));

    private OwnerOnly() {}

    /**
     * Makes a folder, with those above it; what is there already is left as it is. Where files have no such permissions
     * it is made as usual there.
     */
    public static Path folder(Path folder) throws IOException {
        boolean posix = folder.getFileSystem().supportedFileAttributeViews().contains("posix");
        return posix ? Files.createDirectories(folder, OWNER) : Files.createDirectories(folder);
    }
}
