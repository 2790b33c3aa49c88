// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Place.ColdDays;
import sillbook.reckon.dates.DaySpan;

/**
 * Days in a row that a potted pot stood in the cold at one place.
 *
 * @param days none of them still to come
 * @param coldDays the days of the year on which it is cold there
 */
public record ColdStretch(Optional<Id<Place>> place, DaySpan days, ColdDays coldDays) {

    public int daysIn() {
        return (int) days.days();
    }

    /** The days that count: those on which the place is cold. */
    public int daysColdEnough() {
        return new ColdCalendar(coldDays).coldDaysIn(days);
    }

    /** The first day that counts. */
    Optional<LocalDate> began() {
        LocalDate cold = new ColdCalendar(coldDays).coldOnOrAfter(days.start());
        return Optional.of(cold).filter(days::contains);
    }
}
