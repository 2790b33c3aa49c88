// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.diary;

import java.util.List;
import sillbook.model.Entity;
import sillbook.model.Event;
import sillbook.model.Purchase;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
import sillbook.words.DiaryEntry;
import sillbook.words.DiarySearch;
import sillbook.words.PotNames;

/**
 * The lines of the diary.
 *
 * @param entries those the choice lets through, found once for all that is asked of them
 */
record DiaryRows(State state, Choice choice, DiarySearch search, List<DiaryEntry> entries) {
    static DiaryRows of(State state, Choice choice) {
        DiarySearch search = choice.search(state);
        return new DiaryRows(state, choice, search, choice.entries(state, search));
    }

    Rows rows() {
        return Rows.of(
                entries.isEmpty()
                        ? NoEntries.rows(choice)
                        : entries.stream().map(this::row).toList());
    }

    private Row row(DiaryEntry entry) {
        return Row.of(thing(entry), (area, cells) -> line(entry).render(area, cells))
                .withMark(DiaryLine.DAY);
    }

    private DiaryLine line(DiaryEntry entry) {
        return new DiaryLine(entry, new PotNames(state.journal()).labels(entry.pots()), search);
    }

    /** Whether the whole of an entry is seen. */
    boolean isWhole(DiaryEntry entry) {
        return line(entry).isWhole(state.body().columns());
    }

    private static Thing thing(DiaryEntry entry) {
        Entity<?> written = entry.written().get(0);
        if (written instanceof Event event) {
            return new Thing.OfEvent(event.id());
        }
        return written instanceof Purchase purchase
                ? new Thing.OfPurchase(purchase.id())
                : new Thing.Named(written.id().toString());
    }
}
