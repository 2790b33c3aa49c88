// SPDX-License-Identifier: Apache-2.0
package sillbook;

import java.util.Optional;

/**
 * What a command line asks for, as far as it can be told without reading the commands.
 *
 * @param journal the journal it names; only for the screens
 */
record Opening(What what, Optional<String> journal) {
    private static final String JOURNAL = "--journal";

    /** What is to be opened. */
    enum What {
        SCREENS,
        DEMO,
        COMMAND
    }

    private static final Opening COMMAND = new Opening(What.COMMAND, Optional.empty());

    /** The screens for no argument but a journal, the demo for its word alone; all else is a command, right or wrong. */
    static Opening of(String... arguments) {
        if (arguments.length == 1 && arguments[0].equals("demo")) {
            return new Opening(What.DEMO, Optional.empty());
        }
        Optional<String> journal = Optional.empty();
        for (int at = 0; at < arguments.length; at++) {
            if (arguments[at].startsWith(JOURNAL + "=")) {
                journal = Optional.of(arguments[at].substring(JOURNAL.length() + 1));
            } else if (arguments[at].equals(JOURNAL) && at + 1 < arguments.length) {
                at++;
                journal = Optional.of(arguments[at]);
            } else {
                return COMMAND;
            }
        }
        return new Opening(What.SCREENS, journal);
    }
}
