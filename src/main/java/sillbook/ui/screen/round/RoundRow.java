// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.round;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.model.Pot.Way;
import sillbook.season.PotNow;
import sillbook.text.Columns;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.pot.DueSign;
import sillbook.words.PotNames;
import sillbook.words.RoundWords;

/** A pot, or the pots of a batch, in a round: what is marked, what was seen last time, how much cold it has had. */
record RoundRow(State state, List<Id<Pot>> pots, Marks marks) implements Widget {
    static final int COLUMNS = 80;
    private static final int SIGN = 2;
    private static final int NAME = 8;
    static final int FOUND = 29;
    static final int LAST = 52;
    static final int END = 79;
    private static final int APART = 2;
    static final String UNMARKED = ".";

    Row row() {
        return Row.of(new Thing.OfPots(pots), this);
    }

    /** What stands over the columns. */
    static void heading(Rect line, Cells cells) {
        cells.put(line.column() + FOUND, line.row(), "found today", Style.PENCIL);
        cells.put(line.column() + LAST, line.row(), "last time", Style.PENCIL);
        String weeks = "weeks in, cold";
        cells.put(line.column() + END - Width.of(weeks), line.row(), weeks, Style.PENCIL);
    }

    @Override
    public void render(Rect area, Cells cells) {
        int left = area.column();
        PotNow now = state.almanac().pot(pots.get(0));
        PotNames names = new PotNames(state.journal());
        now.next()
                .flatMap(job -> DueSign.of(job.due()))
                .ifPresent(mark -> cells.put(left + SIGN, area.row(), mark.sign(), mark.style()));
        String label = names.labels(pots);
        cells.put(left + Row.LABEL, area.row(), label, Style.BOLD);
        put(Math.max(NAME, Row.LABEL + Width.of(label) + 1), FOUND - 1, names.nameAndCount(pots), area, cells);
        String found = found(names);
        Style style = found.equals(UNMARKED) ? Style.PENCIL : Style.BOLD;
        cells.put(left + FOUND, area.row(), Columns.fit(found, LAST - 1 - FOUND), style);
        String weeks = weeks(now);
        put(END - Width.of(weeks), END, weeks, area, cells);
        put(LAST, END - Width.of(weeks) - APART, new RoundWords(state.journal()).lastTime(pots), area, cells);
    }

    private static void put(int column, int end, String text, Rect area, Cells cells) {
        cells.put(area.column() + column, area.row(), Columns.fit(text, end - column), Style.INK);
    }

    /** Of pots of a batch that are not marked alike, which have what: {@code mould: H11 H14}. */
    private String found(PotNames names) {
        Map<Found, List<Id<Pot>>> alike = marks.alike(pots);
        if (alike.isEmpty()) {
            return UNMARKED;
        }
        return alike.entrySet().stream()
                .map(group -> group.getKey().shown(way(), Whose.unit(state)) + of(group.getValue(), names))
                .collect(Collectors.joining("; "));
    }

    /** The pots of a batch are grown alike. */
    private Way way() {
        return state.journal().pots().get(pots.get(0)).way();
    }

    private String of(List<Id<Pot>> some, PotNames names) {
        return some.size() == pots.size() ? "" : ": " + names.labels(some);
    }

    /** {@code 16, about 15}: whole weeks since it was potted into the cold, and those that count; nothing without cold. */
    private static String weeks(PotNow now) {
        return RoundWords.weeks(now)
                .map(cold -> cold.in() + ", about " + Columns.right(Integer.toString(cold.coldEnough()), 2))
                .orElse("");
    }
}
