// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sillbook.app.Book;
import sillbook.app.Bookshelf;
import sillbook.change.Change;
import sillbook.change.WriteDown;
import sillbook.handbook.Handbook;
import sillbook.model.SeasonPlan;
import sillbook.plan.PlanNow;
import sillbook.plan.PlanReading;
import sillbook.plan.Planning;
import sillbook.words.Kinds;
import sillbook.words.Warned;
import sillbook.words.plan.AdoptWords;
import sillbook.words.plan.Adopting;

/** Says what is planned for a season; looks for the best plan, keeps it, adopts it. */
@Command(
        name = "plan",
        description = {
            "Say what is planned for a season: which pot is potted and brought in when, what blooms on which day,"
                    + " how full the places get, which wishes are met, and what cannot be done and would cure it.",
            "Without NAME it is the plan that is adopted, else the last that is kept; where there is none, what a hand rule"
                    + " gives: two pots every twelve days.",
            "The season is the coming one; while that has no plan and the season under way goes by one, the season under way."
        })
final class PlanCommand implements Callable<Integer> {
    private final Books books;
    private final Printer printer;

    @Parameters(paramLabel = "NAME", arity = "0..1", description = "The letter of a plan: A.")
    private Optional<String> name = Optional.empty();

    @Mixin
    private final PlanAsked asked = new PlanAsked();

    @Option(names = "--best", description = "Look for the best plan; on standard error, what has been found so far.")
    private boolean best;

    @Mixin
    private final SearchTime time = new SearchTime();

    @Option(
            names = "--keep",
            paramLabel = "LETTER",
            description = "Keep it beside the others, under a letter that is free.")
    private Optional<String> keep = Optional.empty();

    @Option(names = "--adopt", description = "Adopt it: its pots wait to be potted. It must be kept.")
    private boolean adopt;

    @Mixin
    private final JsonOption json = new JsonOption();

    PlanCommand(Books books, Printer printer) {
        this.books = books;
        this.printer = printer;
    }

    @Override
    public Integer call() {
        time.begin();
        Optional<String> letter = keep.map(PlanCommand::letter);
        return books.with(book -> {
            Planning planning = asked.planning(book);
            SeasonPlan found = PlanAsked.find(planning, name);
            SeasonPlan plan = best ? new PlanSearch(planning, found.rule(), time, printer).plan() : found;
            if (letter.isPresent()) {
                plan = plan.unadopted(Bookshelf.randomIds().next(), letter.get());
                planning = after(new WriteDown(plan), book);
            }
            if (adopt) {
                planning = adopted(plan, planning, book);
            }
            new PlanSight(planning, plan).sight().show(json, printer);
            return ExitCode.DONE;
        });
    }

    private static String letter(String text) {
        String letter = text.strip().toUpperCase(Locale.ROOT);
        if (!letter.matches("[A-Z]{1,2}")) {
            throw new Misused("'" + text.strip() + "' is no letter to keep a plan under. Write one, as B.");
        }
        return letter;
    }

    private Planning adopted(SeasonPlan plan, Planning planning, Book book) {
        if (planning.journal().seasonPlans().find(plan.id()).isEmpty()) {
            throw new Misused("This plan is not kept yet, so it cannot be adopted. Write --keep and a letter too.");
        }
        PlanNow now = PlanReading.of(planning, plan);
        Planning after = after(Adopting.of(now, new Kinds(planning.journal(), Handbook.standard())), book);
        AdoptWords words = new AdoptWords(planning.journal(), now);
        words.comes().forEach(printer::say);
        words.goes().forEach(says -> printer.warn(new Warned("removes", says)));
        return after;
    }

    /** What is planned with once a change is made. */
    private Planning after(Change change, Book book) {
        printer.say(Kept.step(book.carryOut(change)));
        return asked.planning(book);
    }
}
