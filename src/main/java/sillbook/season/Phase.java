// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Stage;
import sillbook.reckon.dates.DaySpan;

/**
 * Days that a pot spends in one stage at one place.
 *
 * @param place where, as far as it is known; where a pot will be carried is not
 * @param days half-open; what has happened ends with today, what is foretold begins after it
 * @param happened whether these days have been, or are only expected
 */
public record Phase(Stage stage, Optional<Id<Place>> place, DaySpan days, boolean happened) {

    /** Where a pot stood longest in some of its phases; empty where no place was written. */
    public static Optional<Id<Place>> longestAt(Collection<Phase> some) {
        Map<Id<Place>, Long> days = new LinkedHashMap<>();
        some.forEach(phase ->
                phase.place().ifPresent(place -> days.merge(place, phase.days().days(), Long::sum)));
        return days.entrySet().stream()
                .max(Map.Entry.<Id<Place>, Long>comparingByValue())
                .map(Map.Entry::getKey);
    }
}
