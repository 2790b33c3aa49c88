// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import sillbook.app.Bookshelf;
import sillbook.app.Folders;

/** Runs commands as a shell would, and keeps what they print. */
final class Terminal {
    static final LocalDate TODAY = LocalDate.of(2027, 1, 12);

    private final Map<String, String> environment = new HashMap<>(Map.of("LANG", "en_GB.UTF-8"));
    private final Supplier<Bookshelf> shelf;
    private String input = "";

    Terminal(Supplier<Bookshelf> shelf) {
        this.shelf = shelf;
    }

    /** One on which no command may open, or even look for, a journal. */
    static Terminal withoutShelf() {
        return new Terminal(() -> {
            throw new AssertionError("a journal was asked for");
        });
    }

    Terminal with(String variable, String value) {
        environment.put(variable, value);
        return this;
    }

    Terminal typing(String text) {
        input = text;
        return this;
    }

    Printed run(String... arguments) {
        var out = new ByteArrayOutputStream();
        var err = new ByteArrayOutputStream();
        var folders = Folders.of(environment, "Linux", Path.of("/nowhere"));
        var in = new ByteArrayInputStream(input.getBytes(UTF_8));
        var world = new World(environment, folders, shelf, () -> TODAY, in, out, err);
        int code = Commands.run(world, arguments);
        return new Printed(code, out.toString(UTF_8), err.toString(UTF_8));
    }

    /** What a command printed, and the code it ended with. */
    record Printed(int code, String out, String err) {
        List<String> lines() {
            return out.lines().toList();
        }
    }
}
