// SPDX-License-Identifier: Apache-2.0
package sillbook.app.demo;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.SplittableRandom;
import sillbook.app.Book;
import sillbook.app.Bookshelf;
import sillbook.model.Edit;
import sillbook.model.Ids;
import sillbook.model.Journal;
import sillbook.model.KeptWindow;
import sillbook.model.ReadingSource;
import sillbook.model.Settings;
import sillbook.store.Progress;

/**
 * The demo: an invented grower's journal over three finished winters and a fourth in full swing. Its lines lie in the
 * folder {@code demo} of the source, one file a winter, and beside them what its thermometers kept; here they are written into a journal, always the same to the
 * last id.
 */
public final class Demo {
    /** The moment it is seen at, a morning in the middle of its fourth winter. */
    public static final Instant MOMENT = Instant.parse("2027-01-12T09:00:00Z");

    /** Where its grower lives, as far as clocks are concerned. */
    public static final ZoneId ZONE = ZoneId.of("UTC");

    /** The day it is then. */
    public static final LocalDate DAY = LocalDate.ofInstant(MOMENT, ZONE);

    private static final List<String> WINTERS = List.of("2023-24.txt", "2024-25.txt", "2025-26.txt", "2026-27.txt");
    private static final long SEED = 20270112;

    private Demo() {}

    /** The demo as it is at {@link #MOMENT}. */
    public static final class Told {
        private final Journal journal;
        private final List<KeptWindow> kept;
        private final List<Download> downloads;

        /** @param kept the windows foretold whenever a pot was potted or moved, on that day and from what was written by then */
        private Told(Journal journal, List<KeptWindow> kept, List<Download> downloads) {
            this.journal = journal;
            this.kept = List.copyOf(kept);
            this.downloads = List.copyOf(downloads);
        }

        /** What the journal says, its thermometers' files taken in. */
        public Journal journal() {
            return journal;
        }

        /** Begins a journal that says this. */
        public Book begin(Bookshelf shelf, Path file) {
            return takenIn(shelf.begin(file, withoutFiles(), kept));
        }

        /** The same of one that nobody keeps, and that differs in this. */
        public Book spare(Bookshelf shelf, Edit differing) {
            return takenIn(shelf.spare(withoutFiles().with(List.of(differing)), kept));
        }

        private Journal withoutFiles() {
            return Journal.of(journal.entities().stream()
                    .filter(entity -> !(entity instanceof ReadingSource))
                    .toList());
        }

        private Book takenIn(Book book) {
            downloads.forEach(download -> book.takeIn(download.delivery(), Progress.UNWATCHED));
            return book;
        }
    }

    /** Writes all of it. */
    public static Told told() {
        Replay replay = new Replay(Journal.empty(Settings.initial(ZONE)), ids());
        WINTERS.forEach(name -> replay.write(DatedLines.parse(name, text(name))));
        return new Told(replay.journal(), replay.kept(), replay.downloads());
    }

    /** What the journal says at {@link #MOMENT}. */
    public static Journal journal() {
        return told().journal();
    }

    private static Ids ids() {
        return new SplittableRandom(SEED)::nextLong;
    }

    /** A file of the folder {@code demo}, from its first byte. */
    static InputStream open(String name) {
        InputStream in = Demo.class.getResourceAsStream(name);
        if (in == null) {
            throw new IllegalStateException("the program lacks its file demo/" + name);
        }
        return in;
    }

    private static String text(String name) {
        try (InputStream in = open(name)) {
            return new String(in.readAllBytes(), UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException("could not read the program's file demo/" + name, failure);
        }
    }
}
