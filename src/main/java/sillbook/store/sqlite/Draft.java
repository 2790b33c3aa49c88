// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.CopyOption;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.function.Consumer;
import sillbook.store.OwnerOnly;
import sillbook.store.StoreException;

/**
 * A file written under another name in the same folder, which gets its own name when it is whole and on the disk:
 * whatever happens, nothing half written carries that name.
 */
final class Draft {
    private Draft() {}

    /** Writes a file where there is none. */
    static void begin(Path file, Consumer<Path> writing) {
        write(file, writing);
    }

    /** Writes a file, in the place of one that may be there. */
    static void replace(Path file, Consumer<Path> writing) {
        write(file, writing, StandardCopyOption.ATOMIC_MOVE);
    }

    private static void write(Path file, Consumer<Path> writing, CopyOption... naming) {
        try {
            Path folder = OwnerOnly.folder(file.toAbsolutePath().resolveSibling(""));
            Path draft = Files.createTempFile(folder, ".sillbook-", ".part");
            try {
                writing.accept(draft);
                force(draft, StandardOpenOption.WRITE);
                rename(draft, file, naming);
                forceNames(folder);
            } finally {
                Files.deleteIfExists(draft);
            }
        } catch (IOException e) {
            throw Failures.of(file, e);
        }
    }

    private static void rename(Path draft, Path file, CopyOption... naming) throws IOException {
        try {
            Files.move(draft, file, naming);
        } catch (FileAlreadyExistsException e) {
            throw new StoreException.AlreadyThere(file);
        }
    }

    private static void force(Path path, StandardOpenOption access) throws IOException {
        try (FileChannel channel = FileChannel.open(path, access)) {
            channel.force(true);
        }
    }

    /** A name is safe only when its folder is on the disk too. Some systems do not let folders be opened for that. */
    private static void forceNames(Path folder) throws IOException {
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            force(folder, StandardOpenOption.READ);
        }
    }
}
