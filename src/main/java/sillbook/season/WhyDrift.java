// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.model.DayRead;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.season.PlaceClimate.Drift;

/**
 * When a place that warms or cools will be out of its band.
 *
 * @param days those whose means the line is laid through, the first first
 */
public record WhyDrift(Journal journal, Place place, LocalDate today, List<DayRead> days, Drift result)
        implements WhyClimate<Drift> {
    public WhyDrift {
        days = List.copyOf(days);
    }

    /** Empty where it stays in its band, is out of it already, or was not read for a week. */
    static Optional<WhyDrift> of(
            Journal journal, Place place, LocalDate today, PlaceClimate climate, ClimateReading reading) {
        return climate.drift()
                .filter(drift -> climate.week().isPresent())
                .map(drift -> new WhyDrift(journal, place, today, reading.lately(), drift));
    }

    @Override
    public <T> T foldClimate(ClimateCases<T> cases) {
        return cases.drift(this);
    }

    @Override
    public Drift recomputed() {
        return PlaceClimate.of(journal, place.id(), today).drift().orElseThrow();
    }
}
