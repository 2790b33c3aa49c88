// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.model.Day;
import sillbook.model.Findings.Growth;
import sillbook.model.Outcome;

/**
 * The winters of a plant that lives on in its pot, each from its waking to the next. A pot of one winter has only the first.
 *
 * @param past those that are over, the first first
 * @param woken when the present one began; empty in the first
 */
public record Years(List<Year> past, Optional<Day> woken) {
    static final Years FIRST = new Years(List.of(), Optional.empty());

    public Years {
        past = List.copyOf(past);
    }

    /**
     * A winter of it.
     *
     * @param began the day it was woken, or seen to flower again; empty of the first
     * @param bloom nothing where no flower was written
     * @param signs of growth, with the first day each was seen
     */
    public record Year(Optional<Day> began, LocalDate endExclusive, Bloom bloom, Map<Growth, Day> signs) {
        public Year {
            signs = Map.copyOf(signs);
        }

        /** Whether a day lies in it. */
        public boolean contains(LocalDate day) {
            return began.map(Day::likely).filter(day::isBefore).isEmpty() && day.isBefore(endExclusive);
        }
    }

    /** The same, the present winter over and another begun. */
    Years with(Bloom bloom, Map<Growth, Day> signs, Day waking) {
        List<Year> years = new ArrayList<>(past);
        years.add(new Year(woken, waking.likely(), bloom, signs));
        return new Years(years, Optional.of(waking));
    }

    /** Which winter of the plant this is, from 1. */
    public int number() {
        return past.size() + 1;
    }

    /** Of what was written of the pot, what is of the present winter. */
    public List<Outcome> present(List<Outcome> outcomes) {
        return outcomes.stream()
                .filter(outcome -> isPresent(outcome.day().likely()))
                .toList();
    }

    /** Of what was written of the pot, what is of the winter a day lies in. */
    List<Outcome> of(LocalDate day, List<Outcome> outcomes) {
        return outcomes.stream()
                .filter(outcome -> number(day) == number(outcome.day().likely()))
                .toList();
    }

    /** In which winter of the plant a day lies, from 1. */
    private int number(LocalDate day) {
        return 1
                + (int) past.stream()
                        .filter(year -> !day.isBefore(year.endExclusive()))
                        .count();
    }

    /** Whether a day lies in the present winter, or after it. */
    public boolean isPresent(LocalDate day) {
        return woken.filter(began -> day.isBefore(began.likely())).isEmpty();
    }
}
