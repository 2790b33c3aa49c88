// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.failed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.season.PotNow;
import sillbook.season.Suspect;
import sillbook.text.Width;
import sillbook.ui.draw.FieldBox;
import sillbook.ui.draw.Point;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
import sillbook.ui.screen.pot.PotRow;
import sillbook.words.PotNames;
import sillbook.words.PotWords;
import sillbook.words.SuspectWords;
import sillbook.words.Terms;
import sillbook.words.Vocabulary;

/** The lines of the page: what was found, then every cause under what the journal says of it. */
record FailedRows(State state, Id<Pot> pot, Marking marking) {
    static final Thing SIGN = new Thing.Named("sign");
    static final Thing ROOTS = new Thing.Named("roots");
    static final Thing CUT_BUD = new Thing.Named("cut bud");
    static final Thing OPEN = new Thing.Named("open");

    private static final int LABEL = 1;
    private static final int TITLE = 20;
    private static final List<Integer> SIGNS_AT = List.of(8, 22, 34, 52, 62, 67);
    private static final List<Integer> ROOTS_AT = List.of(8, 22, 34, 52);
    private static final int FIELD = 10;
    private static final int FIELD_COLUMNS = 37;
    private static final int CLUE = 20;
    private static final int FIT = 2;

    Rows rows() {
        List<Row> rows = new ArrayList<>();
        rows.add(Row.of(new PotRow(state, state.almanac().outlook().line(pot))));
        rows.add(title());
        rows.add(words(
                SIGN, "Sign", Terms.SIGNS, Marking.SIGNS, SIGNS_AT, List.copyOf(marking.signs()), marking.sign()));
        rows.add(words(
                ROOTS,
                "Roots",
                Terms.FAILED_ROOTS,
                Marking.ROOTS,
                ROOTS_AT,
                marking.found().stream().toList(),
                marking.roots()));
        rows.add(cutBud());
        causes(rows);
        rows.add(Row.of(
                OPEN, (area, cells) -> cells.put(area.column() + Row.LABEL, area.row(), "leave it open", Style.INK)));
        return Rows.of(rows);
    }

    static Thing thing(Suspect suspect) {
        return new Thing.Named("cause " + suspect.cause());
    }

    private Row title() {
        PotNow now = state.almanac().pot(pot);
        PotNames names = new PotNames(state.journal());
        String cold = PotWords.cold(now).map(had -> ", " + had).orElse("");
        String says = now.life().pot().label() + "  " + names.nameAndCount(List.of(pot)) + cold;
        return Row.of((area, cells) -> {
            cells.put(area.column() + LABEL, area.row(), "What went wrong?", Style.BOLD);
            cells.put(area.column() + TITLE, area.row(), says, Style.BOLD);
        });
    }

    private static <E> Row words(
            Thing thing, String label, Vocabulary<E> said, List<E> all, List<Integer> at, List<E> marked, int chosen) {
        return Row.of(thing, (area, cells) -> {
                    cells.put(area.column() + LABEL, area.row(), label, Style.BOLD);
                    for (int i = 0; i < all.size(); i++) {
                        boolean isMarked = marked.contains(all.get(i));
                        int column = area.column() + at.get(i);
                        Style style = isMarked ? Style.BOLD : Style.INK;
                        cells.put(column - 2, area.row(), isMarked ? "+" : "", style);
                        cells.put(column, area.row(), said.say(all.get(i)), style);
                    }
                })
                .withMark(at.get(chosen));
    }

    private Row cutBud() {
        return Row.of(CUT_BUD, (area, cells) -> {
                    cells.put(area.column() + LABEL, area.row(), "Cut bud", Style.BOLD);
                    new FieldBox(marking.cutBud()).render(area.columns(FIELD, FIELD_COLUMNS), cells);
                    cells.put(area.column() + FIELD + FIELD_COLUMNS + 3, area.row(), "if you cut one", Style.PENCIL);
                })
                .withMark(caret());
    }

    private int caret() {
        Point at = new FieldBox(marking.cutBud()).cursor(new Rect(FIELD, 0, FIELD_COLUMNS, 1));
        return at.column();
    }

    private void causes(List<Row> rows) {
        Optional<Suspect.Verdict> under = Optional.empty();
        for (Suspect suspect : state.almanac().outlook().suspects(pot, marking.failure())) {
            Optional<Suspect.Verdict> verdict = Optional.of(suspect.verdict());
            if (!under.equals(verdict)) {
                rows.add(Row.heading(SuspectWords.heading(suspect.verdict())));
                under = verdict;
            }
            cause(suspect, rows);
        }
    }

    /** Whether what is marked fits it, or speaks against it. */
    private static String fit(Suspect suspect) {
        return suspect.weight() == 0 ? "" : suspect.weight() > 0 ? "+" : "-";
    }

    private void cause(Suspect suspect, List<Row> rows) {
        List<String> clues = new SuspectWords(state.journal()).clues(suspect);
        String name = SuspectWords.cause(suspect.cause());
        int first = Math.max(CLUE, Row.LABEL + Width.of(name) + 2);
        rows.add(Row.of(thing(suspect), (area, cells) -> {
            cells.put(area.column() + FIT, area.row(), fit(suspect), Style.BOLD);
            cells.put(area.column() + Row.LABEL, area.row(), name, Style.INK);
            cells.put(area.column() + first, area.row(), clues.get(0), Style.INK);
        }));
        clues.stream()
                .skip(1)
                .forEach(clue -> rows.add(
                        Row.of((area, cells) -> cells.put(area.column() + CLUE, area.row(), clue, Style.INK))));
    }
}
