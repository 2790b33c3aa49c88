// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import sillbook.model.Proposal;
import sillbook.model.Proposal.Course;
import sillbook.model.SeasonPlan;
import sillbook.model.SeasonPlan.Rule;
import sillbook.plan.PlanNow;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.Find;
import sillbook.ui.screen.list.FindPane;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
import sillbook.words.Counts;
import sillbook.words.Days;
import sillbook.words.plan.BloomWords;

/**
 * The plan by hand: the rule on a line, and its pots by the days they come in.
 *
 * @param typed the fields of the rule while they are typed in
 */
record HandView(State state, PlanNow now, Optional<RuleTyped> typed) {
    private static final int INDENT = 8;

    /** A pot of a plan, by its number. */
    static Thing thing(int number) {
        return new Thing.Named("planned pot " + number);
    }

    /** The rule to be typed in; in pencil where the plan is not what it gives. */
    private Widget rule() {
        return typed.isPresent() || isByRule() ? new RuleLine(now.plan().rule(), typed) : this::notByRule;
    }

    private boolean isByRule() {
        SeasonPlan plan = now.plan();
        List<Proposal> byRule = state.almanac().plannings().byHand(plan.season(), plan.rule());
        return plan.search().isEmpty() && courses(byRule).equals(courses(plan.pots()));
    }

    private static List<Course> courses(List<Proposal> pots) {
        return pots.stream().map(Proposal::course).toList();
    }

    private void notByRule(Rect line, Cells cells) {
        Rule rule = now.plan().rule();
        String how = now.plan().search().isPresent() ? "As found, not by the rule: " : "Not by the rule: ";
        String says = how + Counts.of(rule.pots(), "pot") + " every " + Counts.of(rule.everyDays(), "day") + ", from "
                + Days.date(rule.from()) + " to " + Days.date(rule.to());
        cells.put(line.column() + 1, line.row(), says, Style.PENCIL);
    }

    FindPane list(Cursor cursor) {
        if (now.pots().isEmpty()) {
            return new FindPane(Find.CLOSED, Rows.of(nothing()), cursor, List.of(rule()));
        }
        List<Row> rows = IntStream.range(0, now.pots().size())
                .mapToObj(number -> Row.of(thing(number), new PlannedRow(state, now, number)))
                .toList();
        return new FindPane(Find.CLOSED, new Rows(rows, flowers()), cursor, List.of(rule(), PlannedRow::heading));
    }

    private List<Row> flowers() {
        return BloomWords.days(now.ribbon()).stream()
                .map(words -> Row.text(words, Style.PENCIL))
                .toList();
    }

    private List<Row> nothing() {
        List<String> texts = new ArrayList<>(List.of("", ""));
        if (hasBulbs()) {
            texts.add("Nothing planned yet. Say how many pots, every how many days; V is");
            texts.add("the ribbon.");
            texts.add("");
            texts.add("Tab goes to the fields above. Of the bulbs there are none can come in");
            texts.add("on the days that stand there now.");
        } else {
            texts.add("Nothing to plan with: no bulbs of "
                    + state.journal().nameOf(now.plan().season()) + " are bought or chosen.");
            texts.add("");
            texts.add("4  and then T writes down a purchase: bought 20 Marrow Lane");
            texts.add("6  and then V C chooses bulbs that are not bought yet.");
        }
        return texts.stream()
                .map(text -> Row.of((area, cells) -> cells.put(area.column() + INDENT, area.row(), text, Style.INK)))
                .toList();
    }

    private boolean hasBulbs() {
        return !state.almanac().plannings().of(now.plan().season()).candidates().isEmpty();
    }
}
