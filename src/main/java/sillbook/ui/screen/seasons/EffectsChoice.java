// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.seasons;

import java.util.List;
import sillbook.season.past.Trait;
import sillbook.ui.screen.State;
import sillbook.ui.screen.list.LetterChoice;

/** Asks whose effects are to be looked at. */
record EffectsChoice(EffectsPage page) implements LetterChoice {
    @Override
    public String asks() {
        return "Effects of";
    }

    @Override
    public List<Letter> letters(State beneath) {
        return List.of(
                Letter.to('e', "varieties", () -> beneath.withTop(page.by(Trait.VARIETY))),
                Letter.to('m', "potting mixes", () -> beneath.withTop(page.by(Trait.MIX))),
                Letter.to('p', "places of cold", () -> beneath.withTop(page.by(Trait.PLACE))),
                Letter.to('w', "back to what did well", beneath::lifted));
    }
}
