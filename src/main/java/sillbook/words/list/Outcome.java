// SPDX-License-Identifier: Apache-2.0
package sillbook.words.list;

/** What becomes of a row. */
public enum Outcome {
    /** It is written down. */
    NEW("new"),
    /** What it says is written already; it is passed over. */
    SAME("same"),
    /** What is written already is corrected by it. */
    CHANGED("changed"),
    /** It cannot be read, and keeps the whole list out. */
    WRONG("wrong");

    private final String word;

    Outcome(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
