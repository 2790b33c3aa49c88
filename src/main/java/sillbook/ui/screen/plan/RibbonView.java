// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sillbook.chart.RulerLayout;
import sillbook.plan.PlanNow;
import sillbook.plan.Ribbon;
import sillbook.plan.RoomTaken;
import sillbook.plan.Supplies;
import sillbook.plan.WishMet;
import sillbook.text.Columns;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.State;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.Find;
import sillbook.ui.screen.list.FindPane;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
import sillbook.words.plan.SuppliesWords;
import sillbook.words.plan.WishWords;

/** The plan as a ribbon under the months: wishes and what flowers, room taken, and each pot as a line. */
record RibbonView(State state, Drawn drawn, PlanNow now, RulerLayout ruler, Size body) {
    private static final int FEWEST_POTS = 5;
    private static final int ROOMY = 30;
    private static final int COUNTED_END = 24;

    FindPane list(Cursor cursor) {
        List<Row> rows = IntStream.range(0, now.pots().size())
                .mapToObj(number -> Row.of(HandView.thing(number), new PlannedLine(state, ruler, now, number)))
                .toList();
        return new FindPane(Find.CLOSED, new Rows(rows, below()), cursor, heads());
    }

    /** Where there is room, the plans side by side and what is to be bought. */
    private List<Row> below() {
        if (body.rows() < ROOMY) {
            return List.of();
        }
        List<Row> rows = new ArrayList<>();
        List<Row> plans = new PlanTable(state, drawn).lines();
        if (plans.size() > 1) {
            rows.add(Row.BLANK);
            rows.add(Row.of(over(labelled("Side by side", Style.BOLD), PlanTable::heading)));
            rows.addAll(plans);
        }
        Supplies supplies = state.almanac().plannings().supplies(now.plan());
        String toBuy = new SuppliesWords(state.journal()).toBuy(supplies);
        rows.add(Row.BLANK);
        rows.add(Row.of((line, cells) -> {
            int after = cells.put(line.column() + 1, line.row(), "To buy", Style.BOLD) + 3;
            cells.put(after, line.row(), Columns.fit(toBuy, line.right() - 1 - after), Style.INK);
        }));
        return rows;
    }

    private List<Widget> heads() {
        List<Widget> heads = new ArrayList<>();
        Stream.concat(bloom().stream(), rooms().stream()).forEach(row -> heads.add(over(row, this::fold)));
        int room = Math.max(
                0, body.rows() - Math.min(FEWEST_POTS, Math.max(1, now.pots().size())) - 1);
        if (heads.size() > room) {
            int left = heads.size() - room + 1;
            heads.subList(Math.max(0, room - 1), heads.size()).clear();
            heads.add(labelled("        and " + left + " lines more", Style.PENCIL));
        }
        if (body.rows() >= ROOMY) {
            heads.add(labelled("Pots", Style.BOLD));
        }
        return heads;
    }

    private List<Widget> bloom() {
        List<Widget> rows = new ArrayList<>();
        Ribbon all = now.ribbon();
        List<Ribbon> wished = state.almanac().plannings().wished(now.plan());
        Widget heading = labelled("In bloom", Style.BOLD);
        rows.add(wished.contains(all) ? heading : over(heading, new BloomRow(ruler, all, 1)));
        for (int wish = 0; wish < now.wishes().size(); wish++) {
            rows.add(wish(now.wishes().get(wish), wished.get(wish)));
        }
        rows.add(over(counted("pots in bloom"), DigitRow.pots(ruler, all)));
        rows.add(over(counted("chance of one, tenths"), DigitRow.chances(ruler, all)));
        return rows;
    }

    private Widget wish(WishMet met, Ribbon ribbon) {
        return over(
                labelled(label(met), met.isMet() ? Style.INK : Style.RUST),
                new BloomRow(ruler, ribbon, met.isMet() ? 0 : met.wish().asks().pots()));
    }

    /** {@code 14 Feb, 3 scented: 2 short}; where that is too long {@code 14 Feb, 3 scented: -2}. */
    private String label(WishMet met) {
        String what = new WishWords(state.journal()).what(met.wish());
        int columns = ruler.leftColumns() - 2;
        String whole = what + (met.isMet() ? ": met" : ": " + met.lacks() + " short");
        if (Width.of(whole) <= columns) {
            return whole;
        }
        String brief = met.isMet() ? ": met" : ": -" + met.lacks();
        return Columns.fit(what, columns - Width.of(brief)) + brief;
    }

    private List<Widget> rooms() {
        List<Widget> rows = new ArrayList<>();
        for (RoomTaken taken : now.rooms()) {
            if (taken.isUsed()) {
                Widget row = new RoomRow(ruler, taken);
                rows.add(rows.isEmpty() ? over(labelled("Room", Style.BOLD), row) : row);
            }
        }
        return rows;
    }

    /** Today, as on the lines of the pots below. */
    private void fold(Rect line, Cells cells) {
        ruler.foldColumn().ifPresent(column -> cells.put(line.column() + column, line.row(), Sign.FOLD, Style.PENCIL));
    }

    private static Widget labelled(String label, Style style) {
        return (line, cells) -> cells.put(line.column() + 1, line.row(), label, style);
    }

    private static Widget counted(String label) {
        return (line, cells) ->
                cells.put(line.column() + COUNTED_END - Width.of(label), line.row(), label, Style.PENCIL);
    }

    private static Widget over(Widget left, Widget right) {
        return (line, cells) -> {
            left.render(line, cells);
            right.render(line, cells);
        };
    }
}
