// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import sillbook.text.Near;

/** What is said of a command line that cannot be understood: what is wrong, what may have been meant, where help is. */
final class Misuse {
    /** How the library's message begins where an option has nothing after it. */
    private static final String BARE = "Missing required parameter for option";

    private Misuse() {}

    static List<String> of(ParameterException wrong) {
        CommandSpec command = wrong.getCommandLine().getCommandSpec();
        return List.of(what(wrong, command), "'" + command.qualifiedName() + " --help' says how it is used.");
    }

    private static String what(ParameterException wrong, CommandSpec command) {
        if (wrong instanceof UnmatchedArgumentException unmatched) {
            return unknown(unmatched.getUnmatched().get(0), command);
        }
        if (wrong instanceof MissingParameterException missing) {
            boolean isBare = String.valueOf(missing.getMessage()).startsWith(BARE);
            return isBare ? bare(missing.getMissing().get(0)) : missing(missing.getMissing(), command);
        }
        if (wrong instanceof OverwrittenOptionException twice) {
            return command.qualifiedName() + " takes " + name(twice.getOverwritten()) + " only once.";
        }
        return wrong.getMessage() + ".";
    }

    private static String unknown(String word, CommandSpec command) {
        boolean isOption = word.startsWith("-");
        List<String> known = new ArrayList<>(
                isOption ? command.optionsMap().keySet() : command.subcommands().keySet());
        String noun = isOption ? "option" : known.isEmpty() ? "argument" : "command";
        String meant = Near.closest(word, known)
                .map(near -> " Did you mean " + near + "?")
                .orElse("");
        return command.qualifiedName() + " has no " + noun + " " + word + "." + meant;
    }

    /** An option is given, but nothing after it. */
    private static String bare(ArgSpec option) {
        return name(option) + " needs " + option.paramLabel() + " after it.";
    }

    private static String missing(List<ArgSpec> missing, CommandSpec command) {
        List<String> names = missing.stream().map(Misuse::name).toList();
        return command.qualifiedName() + " needs " + String.join(" and ", names) + ".";
    }

    private static String name(ArgSpec argument) {
        return argument.isOption() ? ((CommandLine.Model.OptionSpec) argument).longestName() : argument.paramLabel();
    }
}
