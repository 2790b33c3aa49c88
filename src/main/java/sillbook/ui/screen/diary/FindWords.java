// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.diary;

import java.util.List;
import sillbook.model.Season;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.State;
import sillbook.words.Counts;
import sillbook.words.DiaryEntry;

/** What the page says of finding: how much is found, what can be looked for. */
final class FindWords {
    private FindWords() {}

    /** {@code 9 entries, 3 winters}. */
    static String found(State state, List<DiaryEntry> entries) {
        long winters =
                entries.stream().map(entry -> winter(state, entry)).distinct().count();
        String count = entries.size() == 1 ? "1 entry" : Counts.grouped(entries.size()) + " entries";
        return entries.isEmpty() ? "no entry" : count + ", " + Counts.of(winters, "winter");
    }

    private static Season winter(State state, DiaryEntry entry) {
        return state.journal().seasonOf(entry.day().likely());
    }

    /** What can be looked for, under a list that leaves room for it. */
    static void hint(Rect area, Cells cells) {
        List<String> lines = List.of(
                "Words in any order; accents and capitals do not matter. Also: T8, trench,",
                "tulip, 2025-26, outcome, since 1 dec, -reading to leave readings out.");
        for (int i = 0; i < lines.size() && area.rows() > lines.size(); i++) {
            cells.put(area.column() + 4, area.row() + 1 + i, lines.get(i), Style.PENCIL);
        }
    }
}
