// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.Optional;
import sillbook.app.Bookshelf;
import sillbook.model.SeasonPlan;
import sillbook.model.SeasonPlan.Rule;
import sillbook.plan.Planning;
import sillbook.plan.Seeking;
import sillbook.words.plan.PlanLetters;
import sillbook.words.plan.SeekingWords;

/** Looks for the best plan, and tells of it on standard error. */
final class PlanSearch implements Seeking.Progress {
    private final Planning planning;
    private final Rule rule;
    private final SearchTime time;
    private final Printer printer;
    private final News news;

    PlanSearch(Planning planning, Rule rule, SearchTime time, Printer printer) {
        this.planning = planning;
        this.rule = rule;
        this.time = time;
        this.printer = printer;
        this.news = new News(printer);
    }

    /** The best found, under the next free letter; it is not kept yet. */
    SeasonPlan plan() {
        Seeking.Outcome outcome = Seeking.seek(planning, rule, time.effort(), this);
        if (!(outcome instanceof Seeking.Best best)) {
            throw new CouldNot(SeekingWords.outcome(outcome));
        }
        printer.say(SeekingWords.outcome(outcome));
        return new SeasonPlan(
                Bookshelf.randomIds().next(),
                planning.season(),
                PlanLetters.nextFree(planning.season(), planning.journal()),
                rule,
                best.found().pots(),
                Optional.of(best.found().search()),
                Optional.empty(),
                "");
    }

    @Override
    public boolean wantsStop() {
        return time.isOver();
    }

    @Override
    public void found(Seeking.Found found) {
        news.tell(SeekingWords.progress(found));
    }
}
