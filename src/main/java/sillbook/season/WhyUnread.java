// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.Set;
import sillbook.model.Journal;
import sillbook.model.Place;

/**
 * For how many days nothing is known of a place where pots have their cold.
 *
 * @param last the last day of which anything is
 */
public record WhyUnread(Journal journal, Place place, LocalDate today, LocalDate last, Integer result)
        implements WhyClimate<Integer> {

    @Override
    public <T> T foldClimate(ClimateCases<T> cases) {
        return cases.unread(this);
    }

    @Override
    public Integer recomputed() {
        return (int) ChronoUnit.DAYS.between(last, today);
    }

    @Override
    public Set<Lever> levers() {
        return EnumSet.of(Lever.A_READING);
    }
}
