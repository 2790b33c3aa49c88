// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What the thermometers of all places said, day by day. It is worked out from the readings, of which there can be millions.
 */
public final class DaysRead {
    public static final DaysRead NONE = of(List.of(), List.of());

    private final Map<Id<Place>, NavigableMap<LocalDate, DayRead>> days = new HashMap<>();
    private final Map<Id<Place>, LastRead> last = new HashMap<>();

    private DaysRead(Collection<DayRead> days, Collection<LastRead> last) {
        days.forEach(day ->
                this.days.computeIfAbsent(day.place(), place -> new TreeMap<>()).put(day.day(), day));
        last.forEach(reading -> this.last.put(reading.place(), reading));
    }

    /** Of each place and day one, of each place one reading. */
    public static DaysRead of(Collection<DayRead> days, Collection<LastRead> last) {
        return new DaysRead(days, last);
    }

    /** The days of a place on which anything is known. */
    public NavigableMap<LocalDate, DayRead> at(Id<Place> place) {
        NavigableMap<LocalDate, DayRead> found = days.get(place);
        return found == null ? Collections.emptyNavigableMap() : Collections.unmodifiableNavigableMap(found);
    }

    public Optional<LastRead> lastAt(Id<Place> place) {
        return Optional.ofNullable(last.get(place));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof DaysRead that && days.equals(that.days) && last.equals(that.last);
    }

    @Override
    public int hashCode() {
        return days.hashCode();
    }

    @Override
    public String toString() {
        return days.values() + " " + last.values();
    }
}
