// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import sillbook.model.SeasonPlan.Rule;

/** The days on which pots are potted: those of the grower, with not more than so many pots on one. */
final class PottingDays {
    private static final int DAYS_IN_WEEK = 7;

    private final Rule rule;
    private final Map<LocalDate, Integer> potted = new HashMap<>();

    PottingDays(Rule rule) {
        this.rule = rule;
    }

    /** Takes the latest day up to the last that has hands free, but none before the first; the last itself where there is none. */
    LocalDate take(LocalDate first, LocalDate last) {
        LocalDate taken = last;
        for (LocalDate day = last; !day.isBefore(first); day = day.minusDays(1)) {
            if (isFree(day)) {
                taken = day;
                break;
            }
        }
        take(taken);
        return taken;
    }

    void take(LocalDate day) {
        potted.merge(day, 1, Integer::sum);
    }

    private boolean isFree(LocalDate day) {
        return rule.isPottingDay(day) && potted.getOrDefault(day, 0) < rule.pottedADay();
    }

    /** The latest of the grower's days up to a day, a week back at most. */
    static LocalDate onOrBefore(LocalDate day, Rule rule) {
        LocalDate found = day;
        for (int back = 0; back < DAYS_IN_WEEK && !rule.isPottingDay(found); back++) {
            found = found.minusDays(1);
        }
        return found;
    }

    Map<LocalDate, Integer> all() {
        return Map.copyOf(potted);
    }
}
