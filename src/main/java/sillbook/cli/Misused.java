// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

/** What was given to a command cannot be read; it ends with {@link ExitCode#USED_WRONGLY}. */
final class Misused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String sentence;

    Misused(String sentence) {
        super(sentence);
        this.sentence = sentence;
    }

    String sentence() {
        return sentence;
    }
}
