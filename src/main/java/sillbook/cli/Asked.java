// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine;

/** Whether a command line asks for help. It then gets help, whatever else stands in it, right or wrong. */
final class Asked {
    private static final String END_OF_OPTIONS = "--";

    private Asked() {}

    /** The command that help is asked on. */
    static Optional<CommandLine> forHelp(CommandLine root, List<String> arguments) {
        CommandLine command = root;
        for (String argument : arguments) {
            if (argument.equals(END_OF_OPTIONS)) {
                return Optional.empty();
            }
            if (argument.equals("--help") || argument.equals("-h")) {
                return Optional.of(command);
            }
            command = command.getSubcommands().getOrDefault(argument, command);
        }
        return Optional.empty();
    }
}
