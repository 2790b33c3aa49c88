// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Journal;
import sillbook.model.Season;
import sillbook.model.SeasonPlan;

/** Letters that plans, and the pots in them, are called by. */
public final class PlanLetters {
    private static final int LETTERS = 26;

    private PlanLetters() {}

    /** What the next plan of a season is called: {@code A}, {@code B}; the first that is free. */
    public static String nextFree(Season season, Journal journal) {
        Set<String> taken = SeasonPlan.of(season, journal).stream()
                .map(plan -> plan.name().toUpperCase(Locale.ROOT))
                .collect(Collectors.toSet());
        return Stream.iterate(0, number -> number + 1)
                .map(number -> of(number).toUpperCase(Locale.ROOT))
                .filter(letter -> !taken.contains(letter))
                .findFirst()
                .orElseThrow();
    }

    /** Of a pot, by its number from 0: {@code a}, the 27th {@code aa}. */
    static String of(int number) {
        String last = Character.toString('a' + number % LETTERS);
        return number < LETTERS ? last : of(number / LETTERS - 1) + last;
    }
}
