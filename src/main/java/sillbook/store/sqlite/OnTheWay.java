// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import sillbook.model.DayRead;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.store.DaySums;

/**
 * Sums up days while their readings come in the order of time, so that they need not be read again. The first and the last day, where other readings may
 * be near, are left to be worked out when all are in.
 */
final class OnTheWay implements DaySums.Tally {
    private final Id<Place> place;
    private final DayReads days;
    private final ZoneId zone;
    private final DaySums.Tally tally;
    private LocalDate firstDay = LocalDate.MAX;
    private long first;
    private long last;

    OnTheWay(Id<Place> place, DayReads days) {
        this.place = place;
        this.days = days;
        this.zone = days.basis(place).zone();
        this.tally = days.tally(place, this::over);
    }

    private void over(DayRead day) {
        if (day.day().isAfter(firstDay)) {
            days.put(day);
        }
    }

    @Override
    public void read(long at, int milli) {
        if (firstDay.equals(LocalDate.MAX)) {
            firstDay = DayReads.day(at, zone);
            first = at;
        }
        last = at;
        tally.read(at, milli);
    }

    /** The last day is not over. */
    @Override
    public void end() {}

    /** The readings around which the sums are still to be worked out. */
    List<WrongSums.Stretch> ends() {
        return firstDay.equals(LocalDate.MAX)
                ? List.of()
                : List.of(new WrongSums.Stretch(place, first, first), new WrongSums.Stretch(place, last, last));
    }
}
