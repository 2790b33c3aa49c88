// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.time.LocalDate;
import sillbook.words.DayReader;

/** A day given as an option. */
final class DayOption {
    private DayOption() {}

    /** A day as people say it, in doubt the one to come. */
    static LocalDate ahead(String text, LocalDate today) {
        return DayReader.ahead(today).parseExact(text).fold(day -> day, not -> {
            throw new WrongOption(not.sentence());
        });
    }

    /** What an option says cannot be read; the command was used wrongly. */
    static final class WrongOption extends IllegalArgumentException {
        private static final long serialVersionUID = 1L;

        private final String sentence;

        WrongOption(String sentence) {
            super(sentence);
            this.sentence = sentence;
        }

        String sentence() {
            return sentence;
        }
    }
}
