// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.zip.CRC32;
import org.sqlite.SQLiteJDBCLoader;
import org.sqlite.util.LibraryLoaderUtil;
import sillbook.store.OwnerOnly;

/**
 * The native library of the database driver, unpacked once and found again at the next start. Left to itself the driver
 * unpacks it at every start, into a folder that others may write to.
 */
final class NativeLibrary {
    private static final String FOLDER_PROPERTY = "org.sqlite.lib.path";
    private static final String NAME_PROPERTY = "org.sqlite.lib.name";
    private static final String NAME = "sqlite-" + SQLiteJDBCLoader.getVersion() + "-" + machine() + "-";

    /** Held, because the setting goes when the logger does. */
    private static final Logger DRIVER_LOG = Logger.getLogger("org.sqlite");

    private NativeLibrary() {}

    /** Has the driver use the library in this folder, unless it was told of another. */
    static void unpackInto(Path folder) {
        DRIVER_LOG.setLevel(Level.OFF);
        if (System.getProperty(FOLDER_PROPERTY) != null) {
            return;
        }
        try {
            Path library = in(folder);
            System.setProperty(NAME_PROPERTY, library.getFileName().toString());
            System.setProperty(FOLDER_PROPERTY, folder.toString());
        } catch (IOException noCache) {
            // A folder that cannot be written costs time, not the journal: the driver unpacks for itself.
            System.clearProperty(NAME_PROPERTY);
        }
    }

    /** The library in this folder. Its name ends in the checksum of its content, so that a damaged one is not used. */
    static Path in(Path folder) throws IOException {
        OwnerOnly.folder(folder);
        try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, NAME + "*")) {
            for (Path library : found) {
                if (nameOf(library).equals(library.getFileName().toString())) {
                    return library;
                }
            }
        }
        return unpack(folder);
    }

    /** Folders are shared between machines; the driver's own name for one takes it longer to find than to read a journal. */
    private static String machine() {
        return (System.getProperty("os.name") + "-" + System.getProperty("os.arch"))
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9-]", "");
    }

    private static Path unpack(Path folder) throws IOException {
        String name = LibraryLoaderUtil.getNativeLibResourcePath() + "/" + LibraryLoaderUtil.getNativeLibName();
        Path draft = Files.createTempFile(folder, ".sqlite-", ".part");
        try (InputStream packed = NativeLibrary.class.getResourceAsStream(name);
                OutputStream unpacked = Files.newOutputStream(draft)) {
            if (packed == null) {
                throw new IOException("the driver has no library " + name);
            }
            packed.transferTo(unpacked);
            return Files.move(draft, folder.resolve(nameOf(draft)), StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(draft);
        }
    }

    private static String nameOf(Path library) throws IOException {
        CRC32 checksum = new CRC32();
        checksum.update(Files.readAllBytes(library));
        return NAME + Long.toHexString(checksum.getValue());
    }
}
