// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.SeasonPlan;
import sillbook.plan.PlanNow;
import sillbook.plan.Supplies;
import sillbook.text.Columns;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Row;
import sillbook.words.Counts;
import sillbook.words.Prices;
import sillbook.words.plan.SeekingWords;

/** The plans of a season side by side, a line each; the one shown has a cross. */
record PlanTable(State state, Drawn drawn) {
    private static final int SHOWN = 2;
    private static final int NAME_COLUMNS = 15;
    private static final List<String> HEADS =
            List.of("no bloom", "longest", "pots", "at once", "to buy", "best there is", "note");
    private static final List<Integer> COLUMNS = List.of(20, 29, 38, 43, 51, 59, 82);

    /** Those that are kept, after what is not. */
    List<SeasonPlan> plans() {
        return Stream.concat(drawn.draft(state).stream(), drawn.kept(state).stream())
                .toList();
    }

    static Thing thing(Id<SeasonPlan> plan) {
        return new Thing.Named("plan " + plan);
    }

    /** The lines to look at only. */
    List<Row> lines() {
        return plans().stream().map(plan -> Row.of(line(plan))).toList();
    }

    /** The same to choose from. */
    List<Row> rows() {
        return plans().stream()
                .map(plan -> Row.of(thing(plan.id()), line(plan)))
                .toList();
    }

    static void heading(Rect line, Cells cells) {
        for (int column = 0; column < HEADS.size(); column++) {
            cells.put(line.column() + COLUMNS.get(column), line.row(), HEADS.get(column), Style.PENCIL);
        }
    }

    private Widget line(SeasonPlan plan) {
        return (line, cells) -> {
            if (plan.id().equals(drawn.plan(state).id())) {
                cells.put(line.column() + SHOWN, line.row(), Sign.PICKED, Style.BOLD);
            }
            cells.put(line.column() + Row.LABEL, line.row(), Columns.fit(name(plan), NAME_COLUMNS), Style.BOLD);
            List<String> facts = facts(plan);
            for (int column = 0; column < facts.size(); column++) {
                int at = COLUMNS.get(column);
                int room = column + 1 < facts.size() ? COLUMNS.get(column + 1) - at - 1 : line.columns() - at - 1;
                cells.put(line.column() + at, line.row(), Columns.fit(facts.get(column), room), Style.INK);
            }
        };
    }

    private String name(SeasonPlan plan) {
        if (drawn.kept(state).stream().noneMatch(plan::equals)) {
            return "not kept yet";
        }
        return plan.name() + (plan.adopted().isPresent() ? ", adopted" : "");
    }

    private List<String> facts(SeasonPlan plan) {
        PlanNow now = state.almanac().plannings().now(plan);
        int longest = now.ribbon().longestGap();
        return List.of(
                Counts.of(now.ribbon().gapDays(), "day"),
                longest == 0 ? "none" : Counts.of(longest, "day"),
                Integer.toString(plan.pots().size()),
                Integer.toString(now.ribbon().mostAtOnce()),
                cost(plan),
                SeekingWords.proven(now),
                plan.note());
    }

    /** {@code 38.40}; with a question mark where some, or all, has no price. */
    private String cost(SeasonPlan plan) {
        Supplies supplies = state.almanac().plannings().supplies(plan);
        if (supplies.wanting() == 0) {
            return "-";
        }
        String cost = supplies.cost().stream().map(Prices::say).collect(Collectors.joining(", "));
        return cost + (supplies.withoutPrice() == 0 ? "" : cost.isEmpty() ? "?" : "+?");
    }
}
