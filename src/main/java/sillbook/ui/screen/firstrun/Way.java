// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.firstrun;

/** The ways into the book. */
public enum Way {
    BEGIN("Begin my own", "units, season start, your places; bulbs can wait"),
    DEMO("See the demo", "an invented winter in full swing, a spare copy"),
    OPEN("Open a journal", "a file you already have, *.sillbook");

    private final String words;
    private final String remark;

    Way(String words, String remark) {
        this.words = words;
        this.remark = remark;
    }

    String words() {
        return words;
    }

    String remark() {
        return remark;
    }
}
