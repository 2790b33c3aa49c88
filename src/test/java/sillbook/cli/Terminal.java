// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine;
import sillbook.app.Book;
import sillbook.app.Bookshelf;
import sillbook.app.DayReckoning;
import sillbook.app.Folders;
import sillbook.app.Forecast;
import sillbook.app.demo.Demo;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.store.sqlite.SqliteStorage;

/** Runs commands as a shell would, and keeps what they print. */
final class Terminal {
    static final LocalDate TODAY = LocalDate.of(2027, 1, 12);

    private final Map<String, String> environment = new HashMap<>(Map.of("LANG", "en_GB.UTF-8"));
    private final Supplier<Bookshelf> shelf;
    private String input = "";

    Terminal(Supplier<Bookshelf> shelf) {
        this.shelf = shelf;
    }

    /** One on the demo's morning, with a home of its own and no journal in it yet. */
    static Terminal at(Path home) {
        Clock clock = Clock.fixed(Demo.MOMENT, Demo.ZONE);
        Forecast forecast = Forecast.by(Handbook.standard());
        SqliteStorage storage = new SqliteStorage(home.resolve("cache"), new DayReckoning());
        Terminal terminal = new Terminal(() -> new Bookshelf(storage, clock, Bookshelf.randomIds(), forecast));
        return terminal.with("SILLBOOK_JOURNAL", home.resolve("winter.sillbook").toString());
    }

    /** Told once, when first asked for. */
    private static final class TheDemo {
        static final Demo.Told TOLD = Demo.told();
    }

    /** The same, with the demo's journal. */
    static Terminal ofDemo(Path home) {
        Terminal terminal = at(home);
        TheDemo.TOLD
                .begin(terminal.shelf.get(), home.resolve("winter.sillbook"))
                .close();
        return terminal;
    }

    /** What the journal says. */
    Journal journal(Path home) {
        try (Book book = shelf.get().open(home.resolve("winter.sillbook"))) {
            return book.readAll();
        }
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

    /** The program's commands and options, as they are known to it. */
    CommandLine program() {
        return Commands.program(world(new ByteArrayOutputStream(), new ByteArrayOutputStream()));
    }

    /** What is said, and the code, where every write of data fails in this way. */
    Printed runWhereOutputFails(String reason, String... arguments) {
        var err = new ByteArrayOutputStream();
        OutputStream failing = new OutputStream() {
            @Override
            public void write(int octet) throws IOException {
                throw new IOException(reason);
            }
        };
        int code = Commands.run(world(failing, err), arguments);
        return new Printed(code, "", err.toString(UTF_8));
    }

    private World world(OutputStream out, OutputStream err) {
        var folders = Folders.of(environment, "Linux", Path.of("/nowhere"));
        var in = new ByteArrayInputStream(input.getBytes(UTF_8));
        return new World(environment, folders, shelf, () -> TODAY, in, out, err);
    }

    Printed run(String... arguments) {
        var out = new ByteArrayOutputStream();
        var err = new ByteArrayOutputStream();
        int code = Commands.run(world(out, err), arguments);
        return new Printed(code, out.toString(UTF_8), err.toString(UTF_8));
    }

    /** What a command printed, and the code it ended with. */
    record Printed(int code, String out, String err) {
        List<String> lines() {
            return out.lines().toList();
        }
    }
}
