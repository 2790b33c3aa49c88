// SPDX-License-Identifier: Apache-2.0
package sillbook.app;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.List;
import sillbook.model.Ids;
import sillbook.model.Journal;
import sillbook.model.KeptWindow;
import sillbook.model.Settings;
import sillbook.store.Storage;
import sillbook.store.Store;
import sillbook.store.StoreException;

/** Opens and begins books. */
public final class Bookshelf {
    private final Storage storage;
    private final Desk desk;

    /** A shelf whose books all read this clock, take new ids from this source, and foretell in this way. */
    public Bookshelf(Storage storage, Clock clock, Ids ids, Forecast forecast) {
        this.storage = storage;
        this.desk = new Desk(clock, ids, forecast);
    }

    /** Ids drawn at random: two journals never give the same. The source is sought when the first is drawn. */
    public static Ids randomIds() {
        return () -> Source.RANDOM.nextLong();
    }

    private static final class Source {
        static final SecureRandom RANDOM = new SecureRandom();
    }

    /** Whether there is something to open; what it is, shows when it is opened. */
    public boolean has(Path file) {
        return storage.has(file);
    }

    /**
     * Opens a journal.
     *
     * @throws StoreException when it cannot be opened; the file is then as it was
     */
    public Book open(Path file) {
        return read(file, storage.open(file));
    }

    /**
     * What a journal says, to try changes on; of an empty one where there is none yet.
     *
     * @throws StoreException when the file is something else, or cannot be opened
     */
    public Rehearsal rehearse(Path file) {
        if (!has(file)) {
            return new Rehearsal(empty(), desk);
        }
        try (Book book = open(file)) {
            return new Rehearsal(book.readAll(), desk);
        }
    }

    private Journal empty() {
        return Journal.empty(Settings.initial(desk.clock().getZone()));
    }

    /**
     * Begins an empty journal that counts from now in the clock's zone.
     *
     * @throws StoreException when there is a file already, or none can be made
     */
    public Book begin(Path file) {
        return begin(file, empty());
    }

    /** The same of a journal that says this much from the first; no step leads back behind it. */
    public Book begin(Path file, Journal content) {
        return begin(file, content, List.of());
    }

    /**
     * The same, where something was foretold before.
     *
     * @param kept in the order it was made
     */
    public Book begin(Path file, Journal content, List<KeptWindow> kept) {
        return read(file, storage.begin(file, content, kept));
    }

    /**
     * Begins a journal that nobody keeps: it lies in a folder of its own, and goes when the program ends.
     *
     * @throws StoreException when none can be made
     */
    public Book spare(Journal content, List<KeptWindow> kept) {
        return begin(SpareFolder.untilExit().resolve("spare.sillbook"), content, kept);
    }

    private Book read(Path file, Store store) {
        try {
            return new Book(file, store, desk);
        } catch (StoreException unreadable) {
            store.close();
            throw unreadable;
        }
    }
}
