// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import sillbook.words.Heard;

/** What was asked for cannot be done; the command ends with {@link ExitCode#COULD_NOT}. */
final class CouldNot extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String sentence;

    CouldNot(String sentence) {
        super(sentence);
        this.sentence = sentence;
    }

    /** What was heard; else it cannot be done, as it says. */
    static <T> T unless(Heard<T> heard) {
        return heard.fold(found -> found, not -> {
            throw new CouldNot(not.sentence());
        });
    }

    String sentence() {
        return sentence;
    }
}
