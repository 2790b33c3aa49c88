// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.util.ArrayList;
import java.util.List;
import sillbook.text.Columns;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.Find;
import sillbook.ui.screen.list.FindPane;
import sillbook.ui.screen.list.Labelled;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
import sillbook.words.plan.PlanWhyWords;

/** Why a plan is as it is: what it cannot do, how it stands to each wish, and what it rests on. */
record PlanWhy(Cursor cursor) implements Layer {
    static final PlanWhy OPEN = new PlanWhy(Cursor.FIRST);

    @Override
    public Reach reach() {
        return Reach.PAGE;
    }

    private FindPane list(State state) {
        return list(state, PlanPage.beneath(state).drawn());
    }

    private FindPane list(State state, Drawn drawn) {
        PlanWhyWords words = new PlanWhyWords(
                drawn.planning(state), drawn.now(state), state.kit().handbook());
        List<Row> rows = new ArrayList<>();
        for (PlanWhyWords.Section section : words.sections()) {
            rows.add(Row.heading(section.title()));
            section.lines().forEach(line -> rows.addAll(rows(line, state)));
            rows.add(Row.BLANK);
        }
        return FindPane.of(Find.CLOSED, Rows.of(rows), cursor);
    }

    /** A line that begins with blanks belongs under the one before. */
    private static List<Row> rows(String line, State state) {
        int indent = line.startsWith(" ") ? Labelled.TEXT : Row.LABEL;
        List<Row> rows = new ArrayList<>();
        for (String part : Columns.wrap(line.strip(), state.body().columns() - indent - 1)) {
            Widget drawn = (area, cells) -> cells.put(area.column() + indent, area.row(), part, Style.INK);
            rows.add(
                    rows.isEmpty()
                            ? Row.of(new Thing.Named("why " + line), drawn).withMark(indent)
                            : Row.of(drawn));
        }
        return rows;
    }

    @Override
    public Look look(State state, Size body) {
        FindPane list = list(state);
        Look look = Look.body(list)
                .withPlace("why, " + list.place(body.rows()))
                .withAside(Aside.of(
                        "",
                        "All of it is reckoned with the usual lengths, the chances with all of them.",
                        "What is nudged, or stands elsewhere, answers here at once."))
                .withFoot(Action.MOVE_CURSOR, Action.BACK, Action.KEYS);
        return list.point(body.rows()).map(look::withCursor).orElse(look);
    }

    @Override
    public List<Offer> offers(State state) {
        return List.of(Offer.moving(
                state, key -> new PlanWhy(list(state).pressed(key, state.body().rows()))));
    }

    @Override
    public Layer settled(State before, State after, Cause cause) {
        FindPane list = list(after, PlanPage.beneath(after).drawn().in(after.journal()));
        return new PlanWhy(
                cursor.to(cursor.at(), list.rows(), list.listRows(after.body().rows())));
    }
}
