// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Place.ColdDays;
import sillbook.reckon.dates.DaySpan;

/**
 * Days that a pot spent in the cold at one place.
 *
 * @param place where nobody wrote which, it is taken to be cold
 * @param days since the potting, up to but not with today
 * @param coldDays on which the place is cold
 * @param began the first day that is cold
 * @param parts what counts of them, one for each way of knowing it, in the order of trust
 */
public record ColdStretch(
        Optional<Id<Place>> place, DaySpan days, ColdDays coldDays, Optional<LocalDate> began, List<ColdPart> parts) {
    public ColdStretch {
        parts = List.copyOf(parts);
    }

    public int daysIn() {
        return (int) days.days();
    }

    /** The days that count, in whole days. */
    public int daysColdEnough() {
        return ColdCount.of(List.of(this)).daysColdEnough();
    }

    /** The days that would count had nothing been read. */
    int daysByCalendar() {
        return new ColdCalendar(coldDays).coldDaysIn(days);
    }

    /** Whether anything was read while it stood there. */
    public boolean isRead() {
        return parts.stream().anyMatch(part -> part.basis() != ColdPart.Basis.ASSUMED);
    }
}
