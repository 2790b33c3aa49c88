// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.model.DayRead;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.season.PlaceClimate.Strayed;

/**
 * Since when a place is out of its band, where sums of days tell.
 *
 * @param days those on end on which it was, the first first
 */
public record WhyStrayed(Journal journal, Place place, LocalDate today, List<DayRead> days, Strayed result)
        implements WhyClimate<Strayed> {
    public WhyStrayed {
        days = List.copyOf(days);
    }

    /** Empty where it is in its band, or is known by lowest and highest only: then these say all there is. */
    static Optional<WhyStrayed> of(Journal journal, Place place, LocalDate today, PlaceClimate climate) {
        return climate.strayed()
                .filter(strayed -> strayed.mean().isPresent())
                .map(strayed -> new WhyStrayed(journal, place, today, days(journal, place, strayed, today), strayed));
    }

    private static List<DayRead> days(Journal journal, Place place, Strayed strayed, LocalDate today) {
        return List.copyOf(journal.daysRead()
                .at(place.id())
                .subMap(strayed.since(), true, today, true)
                .values());
    }

    @Override
    public <T> T foldClimate(ClimateCases<T> cases) {
        return cases.strayed(this);
    }

    @Override
    public Strayed recomputed() {
        return PlaceClimate.of(journal, place.id(), today).strayed().orElseThrow();
    }
}
