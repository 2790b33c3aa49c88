// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.choosing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Variety;
import sillbook.season.past.Candidate;
import sillbook.season.past.Choosing;
import sillbook.text.Columns;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
import sillbook.ui.screen.mark.MarkSign;
import sillbook.words.CandidateWords;
import sillbook.words.ChoosingWords;

/**
 * The lines of Choosing.
 *
 * @param order of the varieties; those that are not in it come last
 */
record ChoosingRows(State state, List<Id<Variety>> order) {
    private static final int INDENT = 8;
    private static final int TITLE_GAP = 3;

    ChoosingRows {
        order = List.copyOf(order);
    }

    private Choosing choosing() {
        return state.almanac().choosing();
    }

    private List<Candidate> candidates() {
        Map<Id<Variety>, Integer> ranks = new HashMap<>();
        order.forEach(variety -> ranks.put(variety, ranks.size()));
        return choosing().candidates().stream()
                .sorted(Comparator.comparingInt(
                        one -> ranks.getOrDefault(one.variety().id(), order.size())))
                .toList();
    }

    Rows rows() {
        List<Row> rows = candidates().stream().map(this::row).toList();
        return rows.isEmpty() ? Rows.of(nothing()) : new Rows(rows, pinned());
    }

    private Row row(Candidate candidate) {
        Id<Variety> variety = candidate.variety().id();
        CandidateLine line = new CandidateLine(candidate, state.journal());
        return Row.of(new Thing.OfVariety(variety), MarkSign.before(line, variety, state))
                .foundBy(
                        candidate.variety().name(),
                        candidate.variety().kind().toString(),
                        new CandidateWords(candidate, state.journal()).because().orElse(""));
    }

    /** What the signs mean, and what is left to do with what is chosen. */
    private List<Row> pinned() {
        List<Row> pinned = new ArrayList<>();
        pinned.add(Row.BLANK);
        pinned.add(said(Row.LABEL, "+ chosen   - set aside   the rest undecided; marks stay from year to year"));
        new ChoosingWords(state.journal())
                .toOrder(choosing(), "H hands them on")
                .map(text -> said(Row.LABEL, text))
                .ifPresent(pinned::add);
        return pinned;
    }

    List<Widget> heads() {
        return choosing().candidates().isEmpty() ? List.of() : List.of(this::title, CandidateLine::heading);
    }

    private void title(Rect line, Cells cells) {
        int after = cells.put(line.column() + 1, line.row(), "Choosing", Style.BOLD);
        String season = "for " + state.journal().nameOf(choosing().season());
        int left = cells.put(after + TITLE_GAP, line.row(), season, Style.INK) + TITLE_GAP;
        int end = line.column() + line.columns() - 1;
        String sum = Columns.fit(ChoosingWords.sum(choosing()), end - left);
        cells.put(end - Width.of(sum), line.row(), sum, Style.INK);
    }

    private static List<Row> nothing() {
        return List.of(
                Row.BLANK,
                Row.BLANK,
                said(INDENT, "No variety yet. N writes the first."),
                Row.BLANK,
                said(INDENT, "Then it stands here what speaks for each: how it did, winter after"),
                said(INDENT, "winter, what gap it fills, what it cost. C chooses, X sets aside."));
    }

    private static Row said(int column, String text) {
        return Row.of((area, cells) -> cells.put(area.column() + column, area.row(), text, Style.INK));
    }

    /** The one the cursor stands on. */
    Optional<Candidate> under(Optional<Thing> thing) {
        return thing.flatMap(Thing::asVariety).flatMap(choosing()::of);
    }
}
