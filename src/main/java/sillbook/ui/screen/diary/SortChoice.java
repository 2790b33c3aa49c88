// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.diary;

import java.util.List;
import java.util.stream.Stream;
import sillbook.ui.screen.State;
import sillbook.ui.screen.list.LetterChoice;

/** Asks which sort of entries to show. */
record SortChoice(DiaryPage page) implements LetterChoice {
    @Override
    public String asks() {
        return "Show";
    }

    @Override
    public List<Letter> letters(State beneath) {
        return Stream.of(EntrySort.values())
                .map(sort -> Letter.to(
                        sort.letter(),
                        sort.words(),
                        () -> beneath.withTop(page.showing(page.choice().of(sort)))))
                .toList();
    }
}
