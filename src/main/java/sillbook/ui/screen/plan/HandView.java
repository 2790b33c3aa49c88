// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import sillbook.plan.PlanNow;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.Find;
import sillbook.ui.screen.list.FindPane;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
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

    RuleLine rule() {
        return new RuleLine(now.plan().rule(), typed);
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
