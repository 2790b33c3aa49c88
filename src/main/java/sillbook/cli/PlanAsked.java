// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Option;
import sillbook.app.Book;
import sillbook.app.Bookshelf;
import sillbook.model.Journal;
import sillbook.model.SeasonPlan;
import sillbook.plan.HandRule;
import sillbook.plan.Planning;
import sillbook.words.Seasons;
import sillbook.words.plan.PlanLetters;

/** Which plan a command looks at, and of which season. */
final class PlanAsked {
    @Option(
            names = "--season",
            paramLabel = "SEASON",
            description = "Another season than the coming one: 2027-28, or 2027.")
    private Optional<String> season = Optional.empty();

    Planning planning(Book book) {
        Journal journal = book.readAll();
        return Planning.of(
                journal,
                View.outlook(book),
                season.map(name -> Given.read(Seasons.parse(name))).orElseGet(() -> journal.chosenFor(book.today())));
    }

    /** The one that is named; else the adopted one, else the last; where there is none, what the hand rule gives. */
    static SeasonPlan find(Planning planning, Optional<String> name) {
        List<SeasonPlan> plans = SeasonPlan.of(planning.season(), planning.journal());
        if (name.isPresent()) {
            return plans.stream()
                    .filter(plan -> plan.name().equalsIgnoreCase(name.get().strip()))
                    .findFirst()
                    .orElseThrow(() -> new CouldNot(none(planning, name.get(), plans)));
        }
        return plans.stream()
                .filter(plan -> plan.adopted().isPresent())
                .findFirst()
                .or(() -> plans.stream().reduce((one, other) -> other))
                .orElseGet(() -> byHand(planning));
    }

    private static String none(Planning planning, String name, List<SeasonPlan> plans) {
        String season = planning.journal().nameOf(planning.season());
        String there = plans.isEmpty()
                ? "There is none yet; --keep " + name.strip().toUpperCase(Locale.ROOT) + " keeps one."
                : "There is "
                        + String.join(", ", plans.stream().map(SeasonPlan::name).toList()) + ".";
        return "No plan of season " + season + " is called '" + name.strip() + "'. " + there;
    }

    private static SeasonPlan byHand(Planning planning) {
        SeasonPlan.Rule rule = planning.usualRule();
        return new SeasonPlan(
                Bookshelf.randomIds().next(),
                planning.season(),
                PlanLetters.nextFree(planning.season(), planning.journal()),
                rule,
                HandRule.pots(planning, rule),
                Optional.empty(),
                Optional.empty(),
                "");
    }
}
