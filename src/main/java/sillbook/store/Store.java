// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import sillbook.change.Step;
import sillbook.model.ChartColumn;
import sillbook.model.Id;
import sillbook.model.KeptWindow;
import sillbook.model.Logged;
import sillbook.model.Place;
import sillbook.model.Pot;

/**
 * One open journal. Other windows may have the same one open; each write names the revision it was decided on, and one
 * decided on an earlier revision than the journal has by then writes nothing.
 *
 * <p>Every method may throw a {@link StoreException}; nothing is written then. One thread at a time.
 */
public interface Store extends AutoCloseable {

    /** Everything but the readings of loggers; what these come to, day by day, is part of it. */
    Snapshot read();

    /**
     * As much as the first screen needs: the catalogues, the season that holds this moment with its pots, the pots of
     * other seasons that are not closed, what lives on in them, and all their events; and of what the
     * thermometers said, as far back as those pots need.
     */
    Snapshot readCurrent(Instant now);

    /** Counts the writes of all windows; another number means that somebody wrote. */
    long revision();

    /** Whether nothing can be written: the file or its folder is read-only. */
    boolean isReadOnly();

    /**
     * Writes a step, whole or not at all, and keeps the windows then foretold. What was taken back before it can no
     * longer be put back.
     */
    Written commit(long revision, Step step, List<KeptWindow> windows, Instant now);

    /** Takes back the journal's last step, whichever window wrote it. */
    Written takeBack(long revision, Instant now);

    /** Carries out again the step taken back last. */
    Written putBack(long revision, Instant now);

    /**
     * Takes in what is delivered, as one step, whole or not at all. What the journal has already is passed over. Of two temperatures of one
     * moment one that is not suspicious stands before one that is, then the warmer: so the same readings, in whatever order they come, make
     * the same journal.
     *
     * @return {@link Written.Nothing} when progress stopped it, when the same bytes were taken in for this place before, or when there is no
     *     reading in it
     */
    Written takeIn(long revision, Delivery delivery, Progress progress, Instant now);

    /** What {@link #takeIn} would do, without doing it. */
    Comparison compare(Delivery delivery, Progress progress);

    /** Every reading of a place in a stretch of time, typed ones among them, in the order of time. */
    void readings(Id<Place> place, Instant from, Instant toExclusive, Consumer<Logged> taking);

    /** The same as a list. There can be millions. */
    default List<Logged> readings(Id<Place> place, Instant from, Instant toExclusive) {
        List<Logged> readings = new ArrayList<>();
        readings(place, from, toExclusive, readings::add);
        return List.copyOf(readings);
    }

    /**
     * How warm a place was over a stretch of time, in columns of equal length. Where a column is longer than a day, a day counts to the column
     * that has its noon.
     *
     * @return those columns of which anything is known, in their order
     */
    List<ChartColumn> chart(Id<Place> place, Instant from, Instant toExclusive, int columns);

    /**
     * The journal's steps, the newest first.
     *
     * @param from how many of the newest to pass over
     */
    Steps steps(int from, int howMany);

    /** The windows kept for a pot by steps that are in force, in the order they were made. */
    List<KeptWindow> keptWindows(Id<Pot> pot);

    /** The same of all pots. There are some for every potting and every move there ever was. */
    List<KeptWindow> keptWindows();

    /**
     * All that the journal says, as text, type by type in the order of the ids. Steps, kept windows and traces of what
     * was removed are not part of it, so taking back everything gives the dump the journal began with.
     */
    String dump();

    /**
     * Looks through the readings of a file that was in use when it was opened, as one left by a crash is; of any other nothing. There can be millions,
     * so that it takes seconds; all else of such a file was looked through before it was opened.
     *
     * @throws StoreException.Damaged when they do not hold together
     */
    void lookThrough();

    /** What is wrong with the file or with what it says, in sentences; empty when all is well. */
    List<String> verify();

    /** Writes a checked copy to a file that must not exist yet. It carries that name only when it is whole. */
    void backUp(Path copy);

    /** Leaves one file behind, with everything in it. */
    @Override
    void close();
}
