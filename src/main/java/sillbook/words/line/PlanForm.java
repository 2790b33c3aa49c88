// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.stream.Stream;
import sillbook.change.WriteDown;
import sillbook.model.Journal;
import sillbook.model.SeasonPlan;
import sillbook.model.SeasonPlan.Rule;
import sillbook.plan.HandRule;
import sillbook.plan.Planning;
import sillbook.words.Counts;
import sillbook.words.Days;
import sillbook.words.DaysOfWeek;
import sillbook.words.plan.PlanLetters;
import sillbook.words.plan.SeekingWords;

/** {@code plan 2 every 12 days from 20 dec to 1 mar}: a season is planned by the hand rule, beside the plans there are. */
final class PlanForm implements Form {
    private static final List<Slot<?>> SLOTS = Stream.concat(
                    RuleFacts.SLOTS.stream(), Stream.of(Marking.SEASON, Slots.NOTE))
            .toList();

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "plan",
                "How many pots come in every so many days, from a day to a day; then how many are potted on a day and on which days of the week; "
                        + "for and a season, if not the one planned now; note. What is left out is as usual. The plan stands beside those there are.",
                "plan 2 every 12 days from 20 dec to 1 mar",
                "plan 3 every 14 days, 4 a day, potting sat, sun");
    }

    @Override
    public List<String> keywords() {
        return List.of("plan");
    }

    @Override
    public List<Slot<?>> slots() {
        return SLOTS;
    }

    @Override
    public int wanting(Filled filled) {
        return 0;
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        Bench bench = draft.bench();
        Planning planning = bench.plans().of(Marking.planned(filled, bench));
        Journal journal = bench.journal();
        String name = PlanLetters.nextFree(planning.season(), journal);
        draft.means("plan " + name + " for season " + journal.nameOf(planning.season()) + ", by hand");
        new RuleFacts(filled)
                .over(planning.usualRule(), planning.days(), draft)
                .ifPresent(rule ->
                        plan(planning, name, rule, filled.get(Slots.NOTE).orElse(""), draft));
    }

    private static void plan(Planning planning, String name, Rule rule, String note, Draft draft) {
        draft.means(Counts.of(rule.pots(), "pot") + " every " + Counts.of(rule.everyDays(), "day") + ", from "
                + Days.full(rule.from()) + " to " + Days.full(rule.to()));
        draft.means("at most " + rule.pottedADay() + " potted a day, on " + DaysOfWeek.say(rule.pottingDays()));
        SeasonPlan plan = HandRule.plan(draft.bench().ids().next(), name, planning, rule, note);
        draft.means("comes to " + Counts.of(plan.pots().size(), "pot"));
        Lines.noted(note, draft);
        if (plan.pots().isEmpty()) {
            draft.ask("no bulbs", SeekingWords.NO_BULBS);
        }
        draft.change(new WriteDown(plan));
    }
}
