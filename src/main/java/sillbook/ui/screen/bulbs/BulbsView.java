// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.bulbs;

/** How the page of bulbs is laid out. */
enum BulbsView {
    NAME('n', "by name"),
    RECORD('r', "by record"),
    POTS('s', "what suits pots"),
    PURCHASES('p', "purchases");

    private final char letter;
    private final String words;

    BulbsView(char letter, String words) {
        this.letter = letter;
        this.words = words;
    }

    char letter() {
        return letter;
    }

    String words() {
        return words;
    }
}
