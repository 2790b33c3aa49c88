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

/** The lines of the diary. */
record DiaryRows(State state, Choice choice) {

    Rows rows() {
        DiarySearch search = choice.search(state);
        List<DiaryEntry> entries = choice.entries(state);
        return Rows.of(
                entries.isEmpty()
                        ? NoEntries.rows(choice)
                        : entries.stream().map(entry -> row(entry, search)).toList());
    }

    private Row row(DiaryEntry entry, DiarySearch search) {
        return Row.of(thing(entry), (area, cells) -> line(entry, search).render(area, cells))
                .withMark(DiaryLine.DAY);
    }

    private DiaryLine line(DiaryEntry entry, DiarySearch search) {
        return new DiaryLine(entry, new PotNames(state.journal()).labels(entry.pots()), search);
    }

    /** Whether the whole of an entry is seen. */
    boolean isWhole(DiaryEntry entry) {
        return line(entry, choice.search(state)).isWhole(state.body().columns());
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
