// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import java.util.Locale;

/** One press of a key, as screens understand it. */
public sealed interface Key {
    static Key of(int codePoint) {
        return new Typed(codePoint);
    }

    /** A letter held with Ctrl. */
    static Key ctrl(char letter) {
        return new Control(letter);
    }

    static Key named(Name name) {
        return new Named(name, false, false);
    }

    /** As help and foot write it: {@code Enter}, {@code PgUp}, {@code Ctrl-L}, {@code Space}, {@code M}; letters as capitals. */
    String words();

    /** The same key with a letter in lower case: where letters are commands their case says nothing. */
    default Key anyCase() {
        return this;
    }

    /** A character as typed; letters keep their case. */
    record Typed(int codePoint) implements Key {
        @Override
        public String words() {
            return codePoint == ' ' ? "Space" : Character.toString(Character.toUpperCase(codePoint));
        }

        @Override
        public Key anyCase() {
            return new Typed(Character.toLowerCase(codePoint));
        }
    }

    /** A letter with Ctrl, always in lower case. */
    record Control(char letter) implements Key {
        public Control {
            if (letter < 'a' || letter > 'z') {
                throw new IllegalArgumentException("Ctrl goes with a letter from a to z, not '" + letter + "'");
            }
        }

        @Override
        public String words() {
            return "Ctrl-" + Character.toUpperCase(letter);
        }
    }

    /** A key that has a name. */
    record Named(Name name, boolean ctrl, boolean shift) implements Key {
        @Override
        public String words() {
            return (ctrl ? "Ctrl-" : "") + (shift ? "Shift-" : "") + name.words();
        }
    }

    /** The keys that have names. */
    enum Name {
        ENTER("Enter"),
        ESCAPE("Esc"),
        TAB("Tab"),
        BACKSPACE("Backspace"),
        DELETE("Delete"),
        INSERT("Insert"),
        UP("Up"),
        DOWN("Down"),
        LEFT("Left"),
        RIGHT("Right"),
        HOME("Home"),
        END("End"),
        PAGE_UP("PgUp"),
        PAGE_DOWN("PgDn"),
        F1,
        F2,
        F3,
        F4,
        F5,
        F6,
        F7,
        F8,
        F9,
        F10,
        F11,
        F12;

        private final String words;

        Name() {
            words = name().toUpperCase(Locale.ROOT);
        }

        Name(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }
}
