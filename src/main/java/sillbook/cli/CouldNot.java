// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

/** What was asked for cannot be done; the command ends with {@link ExitCode#COULD_NOT}. */
final class CouldNot extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String sentence;

    CouldNot(String sentence) {
        super(sentence);
        this.sentence = sentence;
    }

    String sentence() {
        return sentence;
    }
}
