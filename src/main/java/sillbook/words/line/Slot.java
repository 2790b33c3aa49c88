// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

/**
 * A place in a form that words can fill.
 *
 * @param noun what belongs there, as a complaint names it: {@code place}; empty when it is not worth naming
 * @param sense the sense that words must make to belong there
 * @param many whether it can be filled more than once
 */
record Slot<T>(String noun, Sense<T> sense, boolean many) {
    static <T> Slot<T> one(String noun, Sense<T> sense) {
        return new Slot<>(noun, sense, false);
    }

    static <T> Slot<T> many(String noun, Sense<T> sense) {
        return new Slot<>(noun, sense, true);
    }
}
