// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import sillbook.chart.RulerLayout;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Proposal.Course;
import sillbook.model.SeasonPlan;
import sillbook.plan.Berth;
import sillbook.plan.Nudge;
import sillbook.plan.PlanNow;
import sillbook.plan.PlannedPot;
import sillbook.plan.Planning;
import sillbook.reckon.dates.DaySpan;
import sillbook.text.Columns;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Labelled;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
import sillbook.words.Days;
import sillbook.words.plan.PlannedPotWords;
import sillbook.words.plan.TroubleWords;

/** What stands on the card of a proposed pot; empty where the plan has no such pot any more. */
record PlannedCardRows(State state, Drawn drawn, RulerLayout ruler, int number) {
    private static final int SHOWN = 2;
    private static final int NAME_COLUMNS = 20;
    private static final int SAYS = 26;

    Rows rows() {
        PlanNow now = drawn.now(state);
        List<Row> rows = new ArrayList<>();
        if (number < now.pots().size()) {
            PlannedPot pot = now.pots().get(number);
            rows.add(Row.of(new PlannedLine(state, ruler, now, number)));
            rows.add(Row.BLANK);
            rows.addAll(Labelled.each(
                    "Takes",
                    new PlannedPotWords(planning(), now).lines(number),
                    state.body().columns()));
            rows.addAll(new Labelled("Bloom", flowers(pot)).rows(state.body().columns()));
            boolean isOpen = pot.candidate().settled().isEmpty();
            boolean isPotted = pot.candidate().cold().isPresent();
            if (isOpen && !isPotted && pot.candidate().needsCold()) {
                rows.addAll(places("In the cold at", planning().colds(), PlannedCard::cold));
            }
            if (isOpen) {
                rows.addAll(places("In flower at", planning().rooms(), PlannedCard::room));
            }
        }
        return Rows.of(rows);
    }

    private Planning planning() {
        return drawn.planning(state);
    }

    private String flowers(PlannedPot pot) {
        DaySpan season = planning().days();
        String range = pot.flowers().isExact()
                ? ""
                : " (" + Days.fromTo(pot.flowers().earliest(), pot.flowers().latest()) + ")";
        return "About " + Days.day(pot.flowers().likely(), season) + range + ", until "
                + Days.date(pot.inFlower().last(), season) + ".";
    }

    private List<Row> places(String heading, List<Berth> berths, BiFunction<Course, Id<Place>, Course> to) {
        List<Row> rows = new ArrayList<>(List.of(Row.BLANK, Row.heading(heading)));
        berths.forEach(berth -> rows.add(Row.of(thing(berth, to), place(berth, to))));
        return rows;
    }

    private Course course() {
        return drawn.plan(state).pots().get(number).course();
    }

    private Thing thing(Berth berth, BiFunction<Course, Id<Place>, Course> to) {
        return new Thing.Named("stands " + to.apply(course(), berth.id()));
    }

    /** The course that a line stands for. */
    Optional<Course> course(Thing thing) {
        return berths(planning().colds(), PlannedCard::cold, thing)
                .or(() -> berths(planning().rooms(), PlannedCard::room, thing));
    }

    private Optional<Course> berths(List<Berth> berths, BiFunction<Course, Id<Place>, Course> to, Thing sought) {
        return berths.stream()
                .filter(berth -> thing(berth, to).equals(sought))
                .map(berth -> to.apply(course(), berth.id()))
                .findFirst();
    }

    /** What would be wrong with the pot there, or what stands there then. */
    private Widget place(Berth berth, BiFunction<Course, Id<Place>, Course> to) {
        boolean isHere = to.apply(course(), berth.id()).equals(course());
        return (line, cells) -> {
            if (isHere) {
                cells.put(line.column() + SHOWN, line.row(), Sign.PICKED, Style.BOLD);
            }
            String name = Columns.fit(berth.place().name(), NAME_COLUMNS);
            cells.put(line.column() + Row.LABEL, line.row(), name, Style.BOLD);
            String says = says(to.apply(course(), berth.id()));
            String fitted = Columns.fit(says, line.columns() - SAYS - 1);
            cells.put(line.column() + SAYS, line.row(), fitted, Style.INK);
        };
    }

    private String says(Course course) {
        SeasonPlan there = Nudge.by(planning(), Nudge.at(drawn.plan(state), number, course), number, 0);
        PlanNow now = state.almanac().plannings().now(there);
        return now.troublesOf(number).stream()
                .findFirst()
                .map(new TroubleWords(now, state.journal())::says)
                .orElse("room for it, and all it needs");
    }
}
