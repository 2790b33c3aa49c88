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
import sillbook.words.plan.PlanCalled;
import sillbook.words.plan.PlanLetters;

/** Which plan a command looks at, and of which season. */
final class PlanAsked {
    @Option(
            names = "--season",
            paramLabel = "SEASON",
            description = "Another season than the one planned now: 2027-28, or 2027.")
    private Optional<String> season = Optional.empty();

    Planning planning(Book book) {
        Journal journal = book.readAll();
        return Planning.of(
                journal,
                View.outlook(book),
                season.map(name -> Given.read(Seasons.parse(name)))
                        .orElseGet(() -> SeasonPlan.plannedOn(book.today(), journal)));
    }

    /** The one that is named; else the adopted one, else the last; where there is none, what the hand rule gives. */
    static SeasonPlan find(Planning planning, Optional<String> name) {
        return name.map(letter -> called(planning, letter.strip()))
                .or(() -> SeasonPlan.adopted(planning.season(), planning.journal()))
                .or(() -> kept(planning).stream().reduce((one, other) -> other))
                .orElseGet(() -> byHand(planning));
    }

    private static SeasonPlan called(Planning planning, String name) {
        return new PlanCalled(planning.journal(), planning.season(), "--season ")
                .find(name)
                .fold(plan -> plan, why -> {
                    throw new CouldNot(why.sentence() + keeping(planning, name));
                });
    }

    private static String keeping(Planning planning, String name) {
        return kept(planning).isEmpty() ? " --keep " + name.toUpperCase(Locale.ROOT) + " keeps one." : "";
    }

    private static List<SeasonPlan> kept(Planning planning) {
        return SeasonPlan.of(planning.season(), planning.journal());
    }

    private static SeasonPlan byHand(Planning planning) {
        return HandRule.plan(
                Bookshelf.randomIds().next(),
                PlanLetters.nextFree(planning.season(), planning.journal()),
                planning,
                planning.usualRule(),
                "");
    }
}
