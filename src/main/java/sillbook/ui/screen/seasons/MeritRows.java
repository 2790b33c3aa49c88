// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.seasons;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.season.past.Merit;
import sillbook.season.past.Merits;
import sillbook.season.past.Tie;
import sillbook.season.past.Trials;
import sillbook.text.Columns;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
import sillbook.ui.screen.mark.MarkSign;
import sillbook.words.Counts;
import sillbook.words.Explanation;
import sillbook.words.InfluenceWords;
import sillbook.words.MeritWhy;
import sillbook.words.MeritWords;

/**
 * The lines of the effects, what cannot be told apart before any figure.
 *
 * @param isFirst whether this is the quick answer, and the one that stays is still being worked out
 * @param state of the page
 */
record MeritRows(Trials trials, Merits merits, MeritWords words, MeritWhy whys, boolean isFirst, State state) {
    private static final int MOST_TIES = 2;
    private static final int MARGIN = 5;

    Rows rows() {
        List<Row> rows = merits.scored().stream().map(this::row).toList();
        return rows.isEmpty() ? Rows.of(nothing()) : new Rows(rows, pinned());
    }

    private Row row(Merit merit) {
        String name = words.name(merit.influence());
        return Row.of(thing(merit), marked(merit, new MeritLine(name, merit))).foundBy(name);
    }

    private int columns() {
        return state.body().columns();
    }

    private Widget marked(Merit merit, Widget line) {
        return merit.influence()
                .shared()
                .flatMap(SeasonsRows::variety)
                .map(variety -> MarkSign.before(line, variety, state))
                .orElse(line);
    }

    /** What the cursor stands on. */
    private static Thing thing(Merit merit) {
        return new Thing.Named(merit.influence().toString());
    }

    Optional<Merit> under(Optional<Thing> thing) {
        return merits.scored().stream()
                .filter(merit -> thing.filter(thing(merit)::equals).isPresent())
                .findFirst();
    }

    private List<Row> nothing() {
        return List.of(
                Row.BLANK, said(trials.silence().map(MeritWords::said).orElse("No scored pot says which it had.")));
    }

    private static Row said(String text) {
        return Row.of((area, cells) -> cells.put(area.column() + Row.LABEL, area.row(), text, Style.INK));
    }

    private List<Row> pinned() {
        List<Row> pinned = new ArrayList<>();
        if (merits.leader().isPresent()) {
            pinned.add(said("◦ dotted: " + Merit.FEW + " pots or fewer. A bar holds the truth 8 times in 10."));
        }
        words.withoutScore(merits).ifPresent(text -> pinned.add(said(Columns.fit(text, columns() - MARGIN))));
        if (isFirst && trials.silence().isEmpty()) {
            pinned.add(said("A first answer; the one that stays is being worked out."));
        }
        return pinned;
    }

    List<Widget> heads() {
        List<Widget> heads = new ArrayList<>();
        heads.add((line, cells) -> {
            int after = cells.put(line.column() + 1, line.row(), "Effects", Style.BOLD);
            cells.put(after + 2, line.row(), Columns.fit(title(), line.columns() - after - 3), Style.INK);
        });
        trials.silence().ifPresent(why -> heads.addAll(text(MeritWords.said(why))));
        merits.ties().stream().limit(MOST_TIES).map(this::tie).forEach(heads::addAll);
        int more = merits.ties().size() - MOST_TIES;
        if (more > 0) {
            heads.addAll(text("And " + Counts.of(more, "more") + " of the kind: sillbook standings"));
        }
        if (!merits.scored().isEmpty()) {
            heads.add((line, cells) -> MeritLine.heading(InfluenceWords.code(merits.trait()), line, cells));
        }
        return heads;
    }

    private String title() {
        String out = MeritWords.takenOut(trials, merits.trait());
        return InfluenceWords.traits(merits.trait()) + (out.isEmpty() ? "" : "; " + out + " taken out") + "   "
                + Counts.of(trials.winters(), "winter") + ", "
                + Counts.of(trials.scored().size(), "pot");
    }

    private List<Widget> tie(Tie tie) {
        return text(words.said(tie));
    }

    private List<Widget> text(String sentence) {
        return Columns.wrap(sentence, Math.max(1, columns() - MARGIN)).stream()
                .<Widget>map(part -> (line, cells) -> cells.put(line.column() + Row.LABEL, line.row(), part, Style.INK))
                .toList();
    }

    Explanation why(Merit merit) {
        return whys.explain(trials, merits, merit);
    }

    /** What is to be said of the line under the cursor. */
    String aside(Merit merit) {
        return words.remark(merits, merit)
                .or(() -> merits.ties().stream()
                        .filter(tie -> tie.these().contains(merit.influence()))
                        .findFirst()
                        .map(words::said))
                .orElseGet(() -> words.aside(merit));
    }
}
