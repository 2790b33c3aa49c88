// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.season.Today.Attention;

/**
 * For how many days nothing is known of a place where pots have their cold.
 *
 * @param last the last day of which anything is
 */
public record WhyUnread(Journal journal, Place place, LocalDate today, LocalDate last, Integer result)
        implements WhyClimate<Integer> {

    /** Empty where what is not known can be bridged, or nothing stands for its cold. */
    static Optional<WhyUnread> of(Journal journal, Standings standings, Place place, LocalDate today) {
        return new ClimateAttention(journal, standings, today)
                .of(place).stream()
                        .filter(Attention.Unread.class::isInstance)
                        .map(Attention.Unread.class::cast)
                        .map(said -> new WhyUnread(journal, place, today, said.last(), said.days()))
                        .findFirst();
    }

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
