// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

import java.nio.file.Path;
import java.util.List;
import sillbook.model.Journal;
import sillbook.model.KeptWindow;

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
     * @param kept what was foretold up to then, in the order it was made
     * @throws StoreException when there is a file already, or none can be made
     */
    Store begin(Path file, Journal content, List<KeptWindow> kept);

    /** The same of one of which nothing was foretold yet. */
    default Store begin(Path file, Journal content) {
        return begin(file, content, List.of());
    }
}
