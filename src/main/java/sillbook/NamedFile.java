// SPDX-License-Identifier: Apache-2.0
package sillbook;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import sillbook.exchange.CsvFile;
import sillbook.ui.screen.Message;

/** A file that was named on the screens. */
final class NamedFile {
    private static final String HOME = "~/";

    private NamedFile() {}

    /**
     * The table in it, or what is wrong with it.
     *
     * @param name as it was typed; {@code ~/} is the home folder, as in a shell
     */
    static Message read(String name, Map<String, String> environment) {
        try {
            Path file = path(name, environment);
            return CsvFile.read(file)
                    .<Message>fold(
                            table -> new Message.TableRead(shortName(file), table),
                            why -> new Message.Failed(shortName(file) + ": " + why.sentence()));
        } catch (InvalidPathException wrong) {
            return new Message.Failed("'" + name + "' cannot be the name of a file. Name another.");
        }
    }

    /**
     * The file of that name.
     *
     * @throws InvalidPathException when it can be none
     */
    static Path path(String name, Map<String, String> environment) {
        return Path.of(withoutTilde(name, environment));
    }

    private static String withoutTilde(String name, Map<String, String> environment) {
        return Optional.ofNullable(environment.get("HOME"))
                .filter(home -> name.startsWith(HOME))
                .map(home -> home + name.substring(1))
                .orElse(name);
    }

    static String shortName(Path file) {
        return String.valueOf(file.getFileName());
    }
}
