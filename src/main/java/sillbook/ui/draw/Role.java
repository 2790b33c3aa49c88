// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

/** What a text or sign says by its colour; the colour only repeats what shape, sign or word say already. */
public enum Role {
    /** Text, in the terminal's own colours. */
    INK('.'),
    /** Asides: column heads, leaders, rules, the page behind a slip. */
    PENCIL('d'),
    /** Cold, below its band. */
    FROST('f'),
    /** Cool room, ready, well. */
    LEAF('l'),
    /** Warm room, above its band. */
    LAMP('w'),
    /** In bloom. */
    PETAL('p'),
    /** Late, wrong; always bold. */
    RUST('r');

    private final char letter;

    Role(char letter) {
        this.letter = letter;
    }

    char letter() {
        return letter;
    }
}
