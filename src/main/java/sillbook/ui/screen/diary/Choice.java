// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.diary;

import java.util.List;
import sillbook.ui.screen.State;
import sillbook.ui.screen.list.Find;
import sillbook.words.DiaryEntry;
import sillbook.words.DiarySearch;

/**
 * Which entries are shown.
 *
 */
record Choice(EntrySort sort, Find find) {
    static final Choice ALL = new Choice(EntrySort.ALL, Find.CLOSED);

    Choice of(EntrySort other) {
        return new Choice(other, find);
    }

    Choice finding(Find other) {
        return new Choice(sort, other);
    }

    boolean isAll() {
        return equals(ALL);
    }

    DiarySearch search(State state) {
        return DiarySearch.parse(find.words(), state.shown().today());
    }

    /** The newest day first. */
    List<DiaryEntry> entries(State state, DiarySearch search) {
        return state.almanac().diary().entries().stream()
                .filter(sort::has)
                .filter(search::finds)
                .toList();
    }
}
