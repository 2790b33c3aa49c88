// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/**
 * The page of commands against the program's own list of them: each shows its help, and so every option, and no option stands
 * there that no command has. That what it shows is what is printed is another test's.
 */
class CommandsPageTest {
    private static final Path PAGE = Path.of("docs/reference/commands.md");
    private static final Pattern OPTION = Pattern.compile("(?<![\\w-])--[a-z][a-z-]+");

    private final CommandLine program = Terminal.withoutShelf().program();

    /** Every command below this one, and itself. */
    private static Stream<CommandLine> all(CommandLine command) {
        return Stream.concat(
                Stream.of(command), command.getSubcommands().values().stream().flatMap(CommandsPageTest::all));
    }

    @Test
    void everyCommandShowsItsHelp() throws IOException {
        List<String> typed = Files.readAllLines(PAGE).stream()
                .filter(line -> line.startsWith("$ "))
                .toList();

        assertThat(all(program).map(command -> "$ " + command.getCommandSpec().qualifiedName() + " --help"))
                .isSubsetOf(typed);
    }

    @Test
    void everyOptionOnThePageIsOneOfTheProgram() throws IOException {
        Set<String> known = new TreeSet<>();
        all(program)
                .forEach(command ->
                        known.addAll(command.getCommandSpec().optionsMap().keySet()));
        known.removeIf(name -> !name.startsWith("--"));
        Set<String> named = new TreeSet<>();
        OPTION.matcher(Files.readString(PAGE)).results().forEach(found -> named.add(found.group()));

        assertThat(named).isEqualTo(known);
    }

    @Test
    void everyCommandIsOneTheTestsKnow() {
        assertThat(all(program)
                        .skip(1)
                        .map(command -> command.getCommandSpec().qualifiedName().substring("sillbook ".length())))
                .containsExactlyInAnyOrderElementsOf(Names.ofCommands().toList());
    }
}
