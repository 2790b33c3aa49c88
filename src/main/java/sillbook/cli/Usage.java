// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.List;

/** What is said when the screens are asked for where there is no terminal. It is said without loading the commands. */
public final class Usage {
    public static final List<String> LINES = List.of(
            "The screens need a terminal at both ends, and here is none.",
            "Usage: sillbook [--journal FILE] [COMMAND]",
            "Commands that need none: demo, today, pots, pot, bulbs, places, diary, write, undo, redo, verify, backup,",
            "reckon. 'sillbook --help' says more.");

    private Usage() {}
}
