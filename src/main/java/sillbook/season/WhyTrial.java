// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.List;
import sillbook.model.Band;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.season.PlaceClimate.Trial;

/**
 * How the trial of a place goes, before any pot is put there.
 *
 * @param days the last seven that count at most, and those between and after them that do not; the first first
 */
public record WhyTrial(Journal journal, Place place, LocalDate today, List<Tried> days, Trial result)
        implements WhyClimate<Trial> {
    public WhyTrial {
        days = List.copyOf(days);
    }

    /**
     * A day of a trial.
     *
     * @param between the lowest and highest of it, or of the span it lies in
     * @param known hours
     * @param counts whether enough is known of it
     */
    public record Tried(LocalDate day, Band between, double known, boolean counts, boolean isInBand) {}

    @Override
    public <T> T foldClimate(ClimateCases<T> cases) {
        return cases.trial(this);
    }

    @Override
    public Trial recomputed() {
        return PlaceClimate.of(journal, place.id(), today).trial().orElseThrow();
    }
}
