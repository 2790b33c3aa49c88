// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.util.List;
import sillbook.reckon.dates.DaySpan;

/**
 * How full a place is on each day of a season.
 *
 * @param days of the season
 * @param pots that stand there, for each day
 */
public record RoomTaken(Berth berth, DaySpan days, List<Integer> pots) {
    public RoomTaken {
        pots = List.copyOf(pots);
    }

    static RoomTaken of(Berth berth, Loads loads, DaySpan days) {
        return new RoomTaken(
                berth,
                days,
                days.start()
                        .datesUntil(days.endExclusive())
                        .map(day -> loads.on(berth.id(), day))
                        .toList());
    }

    public boolean isUsed() {
        return pots.stream().anyMatch(count -> count > 0);
    }
}
