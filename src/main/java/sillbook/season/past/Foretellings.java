// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import sillbook.model.Journal;
import sillbook.model.KeptWindow;
import sillbook.model.Season;

/** The windows that were kept and whose day has come. */
public final class Foretellings {
    private final List<Foretelling> all;

    private Foretellings(List<Foretelling> all) {
        this.all = List.copyOf(all);
    }

    /**
     * Holds windows against what was written up to a day; where nothing was written yet, or a day is only about known, there is
     * nothing to hold them against.
     *
     * @param kept in the order they were made
     */
    public static Foretellings of(Journal journal, Collection<KeptWindow> kept, LocalDate today) {
        return new Foretellings(new ForetellingReading(journal, today).read(kept));
    }

    /** How true the dates of a winter were. */
    public Truth of(Season winter) {
        return new Truth(all.stream().filter(one -> one.winter().equals(winter)).toList());
    }

    /** How true those of so many winters before this one were. */
    public Truth before(Season winter, int winters) {
        return new Truth(all.stream()
                .filter(one -> one.winter().isBefore(winter) && one.winter().year() >= winter.year() - winters)
                .toList());
    }
}
