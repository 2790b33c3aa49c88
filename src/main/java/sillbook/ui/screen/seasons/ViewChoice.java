// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.seasons;

import java.util.List;
import java.util.stream.Stream;
import sillbook.ui.screen.State;
import sillbook.ui.screen.choosing.ChoosingPage;
import sillbook.ui.screen.list.LetterChoice;

/** Asks what the winters are to be looked at by. */
record ViewChoice(SeasonsPage page) implements LetterChoice {
    @Override
    public String asks() {
        return "View";
    }

    @Override
    public List<Letter> letters(State beneath) {
        return Stream.concat(
                        Stream.of(SeasonsView.values())
                                .map(view -> Letter.to(
                                        view.letter(), view.words(), () -> beneath.withTop(page.viewed(view)))),
                        Stream.of(
                                Letter.to('s', "season by season", () -> beneath.laid(WintersPage.OPEN)),
                                Letter.to('c', "choosing", () -> beneath.laid(ChoosingPage.of(beneath))),
                                Letter.to('e', "effects", () -> beneath.laid(EffectsPage.OPEN))))
                .toList();
    }
}
