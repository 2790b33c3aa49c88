// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import sillbook.model.Settings.Colours;

/** The words of the sets of colours a terminal can be drawn in. */
public final class ColourTerms {
    public static final Vocabulary<Colours> COLOURS = Vocabulary.<Colours>of("set of colours")
            .with(Colours.ASK, "ask")
            .with(Colours.DARK, "dark")
            .with(Colours.LIGHT, "light")
            .with(Colours.EITHER, "either")
            .with(Colours.NONE, "none");

    private ColourTerms() {}
}
