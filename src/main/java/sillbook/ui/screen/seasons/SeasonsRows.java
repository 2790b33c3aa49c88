// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.seasons;

import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Variety;
import sillbook.season.past.Shared;
import sillbook.season.past.Tallied;
import sillbook.season.past.Tally;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
import sillbook.ui.screen.mark.MarkSign;
import sillbook.words.TallyWords;

/** The lines of the page of seasons, in one of its views. */
record SeasonsRows(State state, SeasonsView view) {
    private static final int INDENT = 8;

    private Tally all() {
        return state.almanac().winters().tally();
    }

    private List<Tallied> tallied() {
        return state.almanac().tallied(view.by());
    }

    /** Whether any pot was judged in any winter. */
    boolean isEmpty() {
        return all().pots() == 0;
    }

    Rows rows() {
        if (isEmpty()) {
            return Rows.of(nothing());
        }
        TallyWords words = new TallyWords(state.journal());
        List<Row> rows = tallied().stream().map(one -> row(one, words)).toList();
        return rows.isEmpty()
                ? Rows.of(List.of(said(INDENT, "No pot says which " + TallyWords.BYS.say(view.by()) + " it had.")))
                : new Rows(rows, List.of(said(Row.LABEL, TallyWords.KEY)));
    }

    private Row row(Tallied one, TallyWords words) {
        String name = words.name(one.what());
        Widget line = new TallyLine(name, one.tally());
        Widget marked = variety(one.what())
                .map(variety -> MarkSign.before(line, variety, state))
                .orElse(line);
        return Row.of(thing(one.what()), marked)
                .foundBy(name, one.tally().noted().orElse(""));
    }

    /** The variety that the pots share, where it is one. */
    static Optional<Id<Variety>> variety(Shared shared) {
        return shared instanceof Shared.OfVariety of ? Optional.of(of.variety()) : Optional.empty();
    }

    /** What the cursor stands on: told apart by what the pots share. */
    private static Thing thing(Shared shared) {
        return new Thing.Named(shared.toString());
    }

    List<Widget> heads() {
        if (isEmpty()) {
            return List.of();
        }
        Widget title = (line, cells) -> {
            int after = cells.put(line.column() + 1, line.row(), view.title(), Style.BOLD);
            cells.put(after + 2, line.row(), TallyWords.sum(all().winters(), all()), Style.INK);
        };
        String what = TallyWords.BYS.say(view.by());
        return List.of(title, (line, cells) -> TallyLine.heading(what, line, cells));
    }

    private static List<Row> nothing() {
        return List.of(
                Row.BLANK,
                Row.BLANK,
                said(INDENT, "No outcome yet. It comes with the first finished pot; O on its card."),
                Row.BLANK,
                said(INDENT, "Then it stands here which varieties, purchases, potting mixes and"),
                said(INDENT, "places of cold did well, winter after winter, and the pots behind each."));
    }

    private static Row said(int column, String text) {
        return Row.of((area, cells) -> cells.put(area.column() + column, area.row(), text, Style.INK));
    }

    /** What the cursor's line counts. */
    Optional<Tallied> under(Thing thing) {
        return tallied().stream().filter(one -> thing(one.what()).equals(thing)).findFirst();
    }
}
