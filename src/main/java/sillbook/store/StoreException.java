// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The journal could not be opened, read or written; what was there before is still there. Its sentence is for the
 * grower: what happened, where, and what to do.
 */
public abstract sealed class StoreException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String sentence;

    private StoreException(String sentence, @Nullable Throwable cause) {
        super(sentence, cause);
        this.sentence = sentence;
    }

    public String sentence() {
        return sentence;
    }

    private static String reason(@Nullable Throwable cause) {
        return cause == null || cause.getMessage() == null ? "" : ": " + cause.getMessage();
    }

    /** There is no file. */
    public static final class Missing extends StoreException {
        private static final long serialVersionUID = 1L;

        public Missing(Path file) {
            super("There is no journal " + file + ". Begin one, or name another file.", null);
        }
    }

    /** A journal cannot begin where a file is. */
    public static final class AlreadyThere extends StoreException {
        private static final long serialVersionUID = 1L;

        public AlreadyThere(Path file) {
            super("There is a file " + file + " already, and it is left as it is. Name another.", null);
        }
    }

    /** The file is no database at all. */
    public static final class NotADatabase extends StoreException {
        private static final long serialVersionUID = 1L;

        public NotADatabase(Path file, @Nullable Throwable cause) {
            super(
                    file + " is not a journal, or its beginning is damaged. It is left as it is. Name another file.",
                    cause);
        }
    }

    /** The file is a database of some other program. */
    public static final class Foreign extends StoreException {
        private static final long serialVersionUID = 1L;

        public Foreign(Path file) {
            super(
                    file + " is a database of another program, not a journal. It is left as it is. Name another file.",
                    null);
        }
    }

    /** The journal was written by a later version of this program. */
    public static final class Newer extends StoreException {
        private static final long serialVersionUID = 1L;

        public Newer(Path file, int version, int known) {
            super(
                    file + " was written by a later Sillbook: its form is " + version + ", and this one knows up to "
                            + known + ". It is left as it is. Open it with the later Sillbook.",
                    null);
        }
    }

    /** The file is damaged. */
    public static final class Damaged extends StoreException {
        private static final long serialVersionUID = 1L;

        public Damaged(Path file, Optional<Path> newestBackup, String finding, @Nullable Throwable cause) {
            super(
                    file + " is damaged: " + finding + ". It is left as it is. "
                            + newestBackup
                                    .map(backup -> "The newest backup is " + backup + ".")
                                    .orElse("There is no backup beside it."),
                    cause);
        }
    }

    /** Another program keeps the file to itself. */
    public static final class Locked extends StoreException {
        private static final long serialVersionUID = 1L;

        public Locked(Path file, @Nullable Throwable cause) {
            super(file + " is being written by another program. Nothing was changed. Try again in a moment.", cause);
        }
    }

    /** There is no room left. */
    public static final class DiskFull extends StoreException {
        private static final long serialVersionUID = 1L;

        public DiskFull(Path file, @Nullable Throwable cause) {
            super("The disk that holds " + file + " is full. Nothing was changed. Make room, then do it again.", cause);
        }
    }

    /** The file, or its folder, may not be written. */
    public static final class ReadOnly extends StoreException {
        private static final long serialVersionUID = 1L;

        public ReadOnly(Path file, @Nullable Throwable cause) {
            super(file + " may not be written. Nothing was changed. Make the file and its folder writable.", cause);
        }
    }

    /** A journal of an earlier form could not be brought up to date. */
    public static final class NotBroughtUpToDate extends StoreException {
        private static final long serialVersionUID = 1L;

        public NotBroughtUpToDate(Path file, Path backup, Throwable cause) {
            super(
                    file + " is of an earlier form and could not be brought up to date. It is as it was, and " + backup
                            + " is a copy of it. Open it with the Sillbook that wrote it.",
                    cause);
        }
    }

    /** What was to be written cannot be in a journal: the program made a mistake. */
    public static final class Unfit extends StoreException {
        private static final long serialVersionUID = 1L;

        public Unfit(Path file, Throwable cause) {
            super(
                    "That does not fit into " + file + reason(cause) + ". Nothing was changed. It is a fault of the"
                            + " program; please report it.",
                    cause);
        }
    }

    /** The machine could not read or write the file. */
    public static final class Failed extends StoreException {
        private static final long serialVersionUID = 1L;

        public Failed(Path file, String what, @Nullable Throwable cause) {
            super(file + " could not be " + what + reason(cause) + ". Look at the disk and the folder.", cause);
        }
    }
}
