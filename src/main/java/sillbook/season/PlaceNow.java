// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Pot;

/**
 * A place and what stands there.
 *
 * @param pots those there today, by label
 * @param inTwoWeeks those there in 14 days, if all goes as foretold and no place takes more than it has room for
 * @param kept those of them that would have gone on by then, but find no room elsewhere
 * @param waiting bulbs that wait there, the oldest purchase first
 * @param lastLook the last day on which a pot was looked at there; empty when none of those there was
 * @param isCold whether by its days it is cold there today
 * @param round the next round there; empty when it is never asked for, or nothing stands there
 */
public record PlaceNow(
        Place place,
        List<Id<Pot>> pots,
        List<Id<Pot>> inTwoWeeks,
        List<Id<Pot>> kept,
        List<WaitingBulbs> waiting,
        Optional<LocalDate> lastLook,
        boolean isCold,
        Optional<Job.Round> round) {
    public PlaceNow {
        pots = List.copyOf(pots);
        inTwoWeeks = List.copyOf(inTwoWeeks);
        kept = List.copyOf(kept);
        waiting = List.copyOf(waiting);
    }

    /** How many more find room; empty when the room is not known, below 0 when there are too many. */
    public Optional<Integer> left() {
        return place.room().map(room -> room - pots.size());
    }

    /** The same in two weeks. */
    public Optional<Integer> leftInTwoWeeks() {
        return place.room().map(room -> room - inTwoWeeks.size());
    }
}
