// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.Optional;
import sillbook.reckon.dates.DayCount;
import sillbook.reckon.dates.Window;

/**
 * What a pot that is still to be made would take, with the figures that hold now.
 *
 * @param cold days in the cold after potting; empty for a kind that needs none
 * @param coldLimit days of cold after potting past which a longer wait is no longer advised; empty when not known
 * @param coolRoom what the cool room takes of the days to flower; zero where none is used
 * @param toFlower days from the end of the cold, or from potting where none is needed, to the first flower
 * @param inBloom days from the first flower to past bloom
 * @param potting when such bulbs are usually potted for a season
 */
public record Forcing(
        Optional<DayCount> cold,
        Optional<Integer> coldLimit,
        DayCount coolRoom,
        DayCount toFlower,
        DayCount inBloom,
        Window potting) {

    /** The usual days in the cold; none where no cold is needed. */
    public int usualCold() {
        return cold.map(DayCount::typical).orElse(0);
    }

    /** The fewest days in the cold that are published or learnt. */
    public int leastCold() {
        return cold.map(DayCount::low).orElse(0);
    }

    /** The most days in the cold that do no harm, as far as that is known. */
    public int mostCold() {
        int longest = cold.map(DayCount::high).orElse(0);
        return coldLimit.filter(limit -> limit > longest).orElse(longest);
    }

    /** When it flowers first, brought in on a day. */
    public Window flowersFrom(LocalDate in) {
        return Window.on(in).plus(toFlower);
    }

    /** The usual first day in flower. */
    public LocalDate firstFlower(LocalDate in) {
        return in.plusDays(toFlower.typical());
    }

    /** The usual first day past bloom. */
    public LocalDate pastBloom(LocalDate in) {
        return firstFlower(in).plusDays(daysInBloom());
    }

    /** The usual days in flower; at least one. */
    public int daysInBloom() {
        return Math.max(1, inBloom.typical());
    }
}
