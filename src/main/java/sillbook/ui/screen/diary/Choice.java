// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.diary;

import java.util.List;
import java.util.Optional;
import sillbook.ui.draw.Field;
import sillbook.ui.screen.State;
import sillbook.words.DiaryEntry;
import sillbook.words.DiarySearch;

/**
 * Which entries are shown.
 *
 * @param sought what is looked for, as far as it is typed; empty where the field to find is not open
 */
record Choice(EntrySort sort, Optional<Field> sought) {
    static final Choice ALL = new Choice(EntrySort.ALL, Optional.empty());

    Choice of(EntrySort other) {
        return new Choice(other, sought);
    }

    Choice seeking(Field field) {
        return new Choice(sort, Optional.of(field));
    }

    boolean isAll() {
        return equals(ALL);
    }

    DiarySearch search(State state) {
        return DiarySearch.parse(
                sought.map(Field::text).orElse(""), state.shown().today());
    }

    /** The newest day first. */
    List<DiaryEntry> entries(State state) {
        DiarySearch search = search(state);
        return state.almanac().diary().entries().stream()
                .filter(sort::has)
                .filter(search::finds)
                .toList();
    }
}
