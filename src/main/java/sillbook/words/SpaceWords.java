// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import sillbook.model.Settings.LengthUnit;
import sillbook.model.Space;

/** The shelf of a place, and when it is there: {@code shelf 60 x 40 cm, 40 cm clear; there 1 Oct to 1 May}. */
public final class SpaceWords {
    private SpaceWords() {}

    /** A fact each; none where nothing but that it is always there is known. */
    public static List<String> say(Space space, LengthUnit unit) {
        List<String> facts = new ArrayList<>();
        String clear =
                space.clear().map(high -> Lengths.say(high, unit) + " clear").orElse("");
        space.shelf()
                .ifPresent(shelf -> facts.add("shelf " + Lengths.number(shelf.width(), unit) + " x "
                        + Lengths.say(shelf.depth(), unit) + (clear.isEmpty() ? "" : ", " + clear)));
        if (space.shelf().isEmpty() && !clear.isEmpty()) {
            facts.add(clear + " above the pots");
        }
        if (!space.there().isAllYear()) {
            facts.add("there " + ColdDayWords.say(space.there()));
        }
        return facts;
    }
}
