// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import sillbook.handbook.Source;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Temperature;
import sillbook.season.Today.Attention.FrostThere;

/**
 * What is made of the frost that pots stood through at a place.
 *
 * @param days on which it froze, the first first
 */
public record WhyFrost(Journal journal, Place place, LocalDate today, List<Frosty> days, FrostThere result)
        implements WhyClimate<FrostThere> {
    public WhyFrost {
        days = List.copyOf(days);
    }

    /** A day with frost, or that on which a lowest below 0 C was read. */
    public record Frosty(LocalDate day, Temperature lowest) {}

    @Override
    public <T> T foldClimate(ClimateCases<T> cases) {
        return cases.frost(this);
    }

    @Override
    public FrostThere recomputed() {
        Frost frost = Frost.gravest(days.stream()
                        .map(day -> Frost.oneDay(place.id(), day.day(), day.lowest()))
                        .toList())
                .orElseThrow();
        return frost.there(result.pots());
    }

    @Override
    public List<String> ruleSources() {
        return List.of("louisiana-2017", Source.COMMON_PRACTICE);
    }

    @Override
    public Set<Lever> levers() {
        return EnumSet.of(Lever.READINGS, Lever.A_CHECK);
    }
}
