// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.bulbs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sillbook.model.Purchase;
import sillbook.model.Variety;
import sillbook.season.Suiting;
import sillbook.season.VarietyNow;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
import sillbook.ui.screen.mark.MarkSign;
import sillbook.words.PotNames;
import sillbook.words.SuitingWords;

/** The lines of the page of bulbs, as they are to be viewed. */
record BulbsRows(State state, BulbsView view) {
    /** Those without a record come last. */
    private static final Comparator<VarietyNow> BY_RECORD = Comparator.comparingDouble(
                    (VarietyNow now) -> now.mean().orElse(0))
            .thenComparingInt(VarietyNow::pots)
            .reversed();

    Rows rows() {
        List<VarietyNow> varieties = state.almanac().varieties();
        if (varieties.isEmpty()) {
            return Rows.of(NoBulbs.varieties());
        }
        return Rows.of(
                switch (view) {
                    case NAME -> varieties.stream().map(this::row).toList();
                    case RECORD ->
                        varieties.stream().sorted(BY_RECORD).map(this::row).toList();
                    case POTS -> pots(varieties);
                    case PURCHASES -> purchases();
                });
    }

    void heading(Rect line, Cells cells) {
        if (view == BulbsView.PURCHASES) {
            PurchaseLine.heading("variety", line, cells);
        } else {
            VarietyLine.heading(state.shown().season(), state.journal().settings(), line, cells);
        }
    }

    private Row row(VarietyNow now) {
        VarietyLine line =
                new VarietyLine(now, state.shown().season(), state.journal().settings());
        Variety variety = now.variety();
        return Row.of(new Thing.OfVariety(variety.id()), MarkSign.before(line, variety.id(), state))
                .foundBy(variety.name(), variety.kind().toString(), variety.colour(), variety.note());
    }

    private List<Row> pots(List<VarietyNow> varieties) {
        List<Row> rows = new ArrayList<>();
        for (Suiting.Standing standing : Suiting.Standing.values()) {
            List<Row> some = varieties.stream()
                    .filter(now -> suiting(now).standing() == standing)
                    .map(this::row)
                    .toList();
            if (!some.isEmpty()) {
                rows.add(Row.heading(SuitingWords.heading(standing)));
                rows.addAll(some);
            }
        }
        return rows;
    }

    private Suiting suiting(VarietyNow now) {
        return state.almanac().outlook().suiting(now.variety());
    }

    /** The newest first. */
    private List<Row> purchases() {
        PotNames names = new PotNames(state.journal());
        List<Row> rows = state.journal().purchases().all().stream()
                .sorted(Comparator.comparing(Purchase::day).reversed())
                .map(purchase -> Row.of(
                                new Thing.OfPurchase(purchase.id()),
                                new PurchaseLine(purchase, names.variety(purchase.variety())))
                        .foundBy(names.variety(purchase.variety()), purchase.supplier(), purchase.note()))
                .toList();
        return rows.isEmpty() ? NoBulbs.purchases() : rows;
    }
}
