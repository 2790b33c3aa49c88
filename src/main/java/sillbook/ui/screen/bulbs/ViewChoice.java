// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.bulbs;

import java.util.List;
import java.util.stream.Stream;
import sillbook.ui.screen.State;
import sillbook.ui.screen.list.LetterChoice;

/** Asks how the bulbs are to be laid out. */
record ViewChoice(BulbsPage page) implements LetterChoice {
    @Override
    public String asks() {
        return "View";
    }

    @Override
    public List<Letter> letters(State beneath) {
        return Stream.of(BulbsView.values())
                .map(view -> Letter.to(view.letter(), view.words(), () -> beneath.withTop(page.viewed(beneath, view))))
                .toList();
    }
}
