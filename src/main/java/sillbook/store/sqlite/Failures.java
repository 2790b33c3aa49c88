// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteErrorCode;
import sillbook.store.Backups;
import sillbook.store.StoreException;

/** What a failure of the database or the disk means to the grower. */
final class Failures {
    private Failures() {}

    static StoreException of(Path file, SQLException failure) {
        return switch (SQLiteErrorCode.getErrorCode(failure.getErrorCode())) {
            case SQLITE_NOTADB -> new StoreException.NotADatabase(file, failure);
            case SQLITE_CORRUPT -> damaged(file, "its pages do not fit together", failure);
            case SQLITE_BUSY, SQLITE_LOCKED -> new StoreException.Locked(file, failure);
            case SQLITE_FULL -> new StoreException.DiskFull(file, failure);
            case SQLITE_READONLY, SQLITE_PERM -> new StoreException.ReadOnly(file, failure);
            case SQLITE_CANTOPEN -> unopened(file, failure);
            case SQLITE_CONSTRAINT -> new StoreException.Unfit(file, failure);
            default -> new StoreException.Failed(file, "read or written", failure);
        };
    }

    /** A journal that was not closed has a log beside it, and to read that takes a folder that can be written. */
    private static StoreException unopened(Path file, SQLException failure) {
        return Files.isReadable(file)
                ? new StoreException.ReadOnly(file, failure)
                : new StoreException.Failed(file, "read", null);
    }

    static StoreException of(Path file, IOException failure) {
        String says = String.valueOf(failure.getMessage());
        if (failure instanceof AccessDeniedException || says.contains("Read-only file system")) {
            return new StoreException.ReadOnly(file, failure);
        }
        return says.contains("No space left")
                ? new StoreException.DiskFull(file, failure)
                : new StoreException.Failed(file, "written", failure);
    }

    /** The first of some findings is that the file is damaged. */
    static void requireNone(Path file, List<String> findings) {
        if (!findings.isEmpty()) {
            throw damaged(file, findings.get(0), null);
        }
    }

    static StoreException damaged(Path file, String finding, @Nullable Throwable cause) {
        return new StoreException.Damaged(file, Backups.of(file).newest(), finding, cause);
    }
}
