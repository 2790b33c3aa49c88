// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

import java.nio.file.Path;
import sillbook.model.Journal;

/** Where journals are kept, each in one file. What cannot be opened is refused with a {@link StoreException}. */
public interface Storage {

    /** What lies in the place of a journal. */
    enum Found {
        /** No file, or one in which nothing was ever begun. */
        NOTHING,
        /** A journal this program can open. */
        JOURNAL,
        /** A journal of an earlier version, which opening brings up to date after a backup. */
        EARLIER_JOURNAL
    }

    /**
     * Looks at a file without altering a byte of it.
     *
     * @throws StoreException when it is something else than a journal this program can open
     */
    Found probe(Path file);

    /** Whether anything lies there, which costs next to nothing; what it is, shows when it is opened. */
    boolean has(Path file);

    /**
     * Opens a journal. A file that is refused stays as it is, byte for byte.
     *
     * @throws StoreException when it cannot be opened
     */
    Store open(Path file);

    /**
     * Begins a journal that says this much from the first; no step leads back behind it.
     *
     * @throws StoreException when there is a file already, or none can be made
     */
    Store begin(Path file, Journal content);
}
