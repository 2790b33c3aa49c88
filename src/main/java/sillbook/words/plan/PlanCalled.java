// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sillbook.model.Journal;
import sillbook.model.Season;
import sillbook.model.SeasonPlan;
import sillbook.words.Counts;
import sillbook.words.Heard;

/**
 * A plan of a season by its letter.
 *
 * @param turning what is written before a season, where another is meant: {@code "for "}
 */
public record PlanCalled(Journal journal, Season season, String turning) {

    /** The plan; else which there are, and how one of that letter is written that another season has. */
    public Heard<SeasonPlan> find(String letter) {
        return SeasonPlan.called(season, letter, journal)
                .map(Heard::as)
                .orElseGet(() -> Heard.not(
                        "no such plan",
                        "No plan of season " + journal.nameOf(season) + " is called '"
                                + letter.toUpperCase(Locale.ROOT) + "'. " + there()
                                + elsewhere(letter).map(this::turn).orElse("")));
    }

    private String there() {
        List<String> names =
                SeasonPlan.of(season, journal).stream().map(SeasonPlan::name).toList();
        return names.isEmpty()
                ? "There is none yet."
                : (names.size() == 1 ? "There is " : "There are ") + Counts.and(names) + ".";
    }

    /** The last other season that has one. */
    private Optional<Season> elsewhere(String letter) {
        return journal.seasonPlans().all().stream()
                .filter(plan -> plan.name().equalsIgnoreCase(letter))
                .map(SeasonPlan::season)
                .max(Comparator.naturalOrder());
    }

    private String turn(Season other) {
        String name = journal.nameOf(other);
        return " Season " + name + " has one: write " + turning + name + ".";
    }
}
