// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.today;

import java.util.ArrayList;
import java.util.List;
import sillbook.season.Today;
import sillbook.season.Today.Attention;
import sillbook.text.Columns;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Role;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Row;
import sillbook.words.AttentionWords;
import sillbook.words.PotNames;

/** What blooms and which places want attention, a line each, at the end of the list where they always stay in sight. */
record PinnedRows(State state) {
    static final Thing IN_BLOOM = new Thing.Named("in bloom");
    static final Thing PLACES = new Thing.Named("places");
    private static final int FIRST = 11;
    private static final int APART = 3;

    List<Row> rows() {
        Today today = state.almanac().today();
        List<Row> rows = new ArrayList<>();
        if (!today.inBloom().isEmpty()) {
            List<Mark> marks = today.inBloom().stream().map(this::mark).toList();
            rows.add(row("In bloom", IN_BLOOM, marks));
        }
        if (!today.places().isEmpty()) {
            List<Mark> marks = today.places().stream().map(this::mark).toList();
            rows.add(row("Places", PLACES, marks));
        }
        return rows;
    }

    /** A few words with a sign before them. */
    private record Mark(Sign sign, Style style, String label, String words) {
        int columns() {
            return 2 + Width.of(label) + Width.of(words);
        }
    }

    private Mark mark(Today.Blooming blooming) {
        PotNames names = new PotNames(state.journal());
        String words = " " + names.name(blooming.pots().get(0)) + " day " + blooming.dayOfBloom();
        return new Mark(Sign.BLOOM, Style.of(Role.PETAL).withBold(), names.labels(blooming.pots()), words);
    }

    private Mark mark(Attention attention) {
        Sign sign = AttentionSign.of(attention);
        return new Mark(sign, AttentionSign.style(sign), "", new AttentionWords(state.journal()).say(attention));
    }

    private static Row row(String heading, Thing thing, List<Mark> marks) {
        return Row.of(thing, (area, cells) -> {
                    cells.put(area.column() + 1, area.row(), heading, Style.BOLD);
                    render(marks, area.withoutLeft(FIRST), cells);
                })
                .withMark(1);
    }

    /** As many as fit whole, the first in any case; then how many more there are. */
    private static void render(List<Mark> marks, Rect area, Cells cells) {
        int column = area.column();
        for (int i = 0; i < marks.size(); i++) {
            Mark mark = marks.get(i);
            String more = "and " + (marks.size() - i) + " more";
            boolean isLast = i == marks.size() - 1;
            int room = area.right() - 1 - column - (isLast ? 0 : APART + Width.of(more));
            if (i > 0 && mark.columns() > room) {
                cells.put(column, area.row(), more, Style.INK);
                return;
            }
            cells.put(column, area.row(), mark.sign(), mark.style());
            int after = cells.put(column + 2, area.row(), mark.label(), Style.BOLD);
            String words = Columns.fit(mark.words(), room - (after - column));
            column = cells.put(after, area.row(), words, Style.INK) + APART;
        }
    }
}
