// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.seasons;

import sillbook.season.past.By;

/** What the page of seasons counts by. */
enum SeasonsView {
    VARIETIES('w', "what did well", "What did well", By.VARIETY),
    PURCHASES('u', "purchases", "Purchases", By.PURCHASE),
    POTTING_MIXES('m', "potting mixes", "Potting mixes", By.POTTING_MIX),
    PLACES('p', "places of cold", "Places of cold", By.PLACE);

    private final char letter;
    private final String words;
    private final String title;
    private final By by;

    SeasonsView(char letter, String words, String title, By by) {
        this.letter = letter;
        this.words = words;
        this.title = title;
        this.by = by;
    }

    char letter() {
        return letter;
    }

    String words() {
        return words;
    }

    /** Over the list. */
    String title() {
        return title;
    }

    By by() {
        return by;
    }
}
