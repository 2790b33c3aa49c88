// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.plan.Supplies;
import sillbook.plan.Supplies.Bulbs;
import sillbook.text.Columns;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Right;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
import sillbook.words.Counts;
import sillbook.words.Days;
import sillbook.words.PotNames;
import sillbook.words.Prices;
import sillbook.words.plan.SuppliesLines;

/** The lines of what a plan takes: bulbs by supplier, what is over, containers, potting mix and labels. */
record SuppliesRows(State state, Supplies supplies) {
    private static final int NAME_COLUMNS = 22;
    private static final int TAKES_END = 33;
    private static final int BUY_END = 41;
    private static final int ORDER = 45;
    private static final int POT = 57;
    private static final int COST_END = 77;

    static void heading(Rect line, Cells cells) {
        Right right = new Right(line, cells);
        right.put(TAKES_END, "bulbs", Style.PENCIL);
        right.put(BUY_END, "to buy", Style.PENCIL);
        cells.put(line.column() + ORDER, line.row(), "order by", Style.PENCIL);
        cells.put(line.column() + POT, line.row(), "pot by", Style.PENCIL);
        right.put(COST_END, "about", Style.PENCIL);
    }

    Rows rows() {
        List<Row> rows = new ArrayList<>();
        bySupplier().forEach((supplier, bulbs) -> {
            rows.add(Row.heading(supplier.isEmpty() ? "No supplier is written" : supplier));
            bulbs.forEach(one -> rows.add(row(one)));
        });
        rows.addAll(rest());
        return Rows.of(rows.isEmpty() ? List.of(said("The plan has no pot that is still to be made.")) : rows);
    }

    /** What is to be ordered soonest first, and what is ordered or in hand after it. */
    private Map<String, List<Bulbs>> bySupplier() {
        return SuppliesLines.inOrder(supplies).stream()
                .sorted(Comparator.comparing((Bulbs one) -> one.wanting() == 0))
                .collect(Collectors.groupingBy(Bulbs::supplier, LinkedHashMap::new, Collectors.toList()));
    }

    private Row row(Bulbs bulbs) {
        return Row.of(new Thing.Named("bulbs " + bulbs.variety() + bulbs.purchase()), (line, cells) -> {
            String name = new PotNames(state.journal()).variety(bulbs.variety());
            cells.put(line.column() + Row.LABEL, line.row(), Columns.fit(name, NAME_COLUMNS), Style.BOLD);
            Right right = new Right(line, cells);
            right.put(TAKES_END, Integer.toString(bulbs.bulbs()), Style.INK);
            if (bulbs.wanting() == 0) {
                cells.put(line.column() + ORDER, line.row(), "ordered, or in hand", Style.PENCIL);
            } else {
                right.put(BUY_END, Integer.toString(bulbs.wanting()), Style.BOLD);
                cells.put(line.column() + ORDER, line.row(), Days.column(bulbs.orderBy()), Style.INK);
                cells.put(line.column() + POT, line.row(), Days.column(bulbs.potBy()), Style.INK);
                right.put(COST_END, bulbs.cost().map(Prices::say).orElse("-"), Style.INK);
            }
        });
    }

    private List<Row> rest() {
        SuppliesLines lines = new SuppliesLines(state.journal());
        List<Row> rows = Stream.of(
                        supplies.leftOver().stream().map(lines::leftOver),
                        supplies.containers().stream().map(lines::pots),
                        supplies.mix().stream().map(lines::mix),
                        Stream.of(Counts.of(supplies.labels(), "label")).filter(none -> supplies.labels() > 0))
                .flatMap(some -> some)
                .map(SuppliesRows::said)
                .toList();
        return rows.isEmpty() ? rows : with(Row.heading("Beside them"), rows);
    }

    private static List<Row> with(Row heading, List<Row> rows) {
        List<Row> all = new ArrayList<>(List.of(Row.BLANK, heading));
        all.addAll(rows);
        return all;
    }

    private static Row said(String text) {
        return Row.text(text, Style.INK).on(new Thing.Named(text));
    }
}
