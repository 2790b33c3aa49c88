// SPDX-License-Identifier: Apache-2.0
package sillbook.story;

/** Hands on the keys of a terminal; every key is counted, a letter typed is one. */
final class CountedKeys {
    private final Tmux terminal;
    private int keys;

    CountedKeys(Tmux terminal) {
        this.terminal = terminal;
    }

    CountedKeys press(String... names) {
        keys += names.length;
        terminal.press(names);
        return this;
    }

    CountedKeys type(String text) {
        keys += text.length();
        terminal.type(text);
        return this;
    }

    CountedKeys waitFor(String text) {
        terminal.waitFor(text);
        return this;
    }

    int keys() {
        return keys;
    }

    /** Says how many it took, for whoever reads the log of the tests. */
    int told(String job) {
        System.out.println(job + ": " + keys + " keys");
        return keys;
    }
}
