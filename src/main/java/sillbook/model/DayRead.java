// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.time.LocalDate;

/**
 * What the readings of a place come to on one day. Between two readings the temperature is taken to go evenly, unless they lie further apart
 * than the place bridges; nothing is made up for such a gap. Hours are of that day, from its midnight to the next.
 *
 * @param readings how many there are; a day that lies wholly between two readings has none
 * @param known hours that are accounted for, above 0
 * @param effective of those, what counts as cold by the weight of each temperature
 * @param published of those, what counts where the hours from 0 to 2 C count whole, as published schedules of weeks do
 * @param freezing hours below 0 C
 * @param warm hours above 13 C
 * @param mean of the known hours, in thousandths of a degree
 * @param lowest of the known hours, in thousandths of a degree
 * @param highest of the known hours, in thousandths of a degree
 */
public record DayRead(
        Id<Place> place,
        LocalDate day,
        int readings,
        double known,
        double effective,
        double published,
        double freezing,
        double warm,
        int mean,
        int lowest,
        int highest) {
    public DayRead {
        if (known <= 0 || lowest > mean || mean > highest) {
            throw new IllegalArgumentException("no day of readings: " + known + " h, " + lowest + " to " + highest);
        }
    }

    /** The temperatures between which it stayed. */
    public Band between() {
        return new Band(new Temperature(lowest, ""), new Temperature(highest, ""));
    }
}
