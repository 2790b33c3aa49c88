// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

/** What a figure is counted in. */
public enum Unit {
    WEEKS("weeks"),
    DAYS("days"),
    CELSIUS("C"),
    CENTIMETRES("cm"),
    BULBS("bulbs"),
    /** A part of one, from 0 to 1. */
    SHARE("share");

    private final String word;

    Unit(String word) {
        this.word = word;
    }

    /** As data files and answers write it. */
    public String word() {
        return word;
    }
}
