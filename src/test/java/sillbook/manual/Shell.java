// SPDX-License-Identifier: Apache-2.0
package sillbook.manual;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sillbook.app.Bookshelf;
import sillbook.app.DayReckoning;
import sillbook.app.Folders;
import sillbook.app.Forecast;
import sillbook.app.demo.Demo;
import sillbook.cli.Commands;
import sillbook.cli.World;
import sillbook.handbook.Handbook;
import sillbook.store.sqlite.SqliteStorage;

/**
 * Types what a page says to type, in a home of its own and on the day the page says. The program's own commands run in this process, on
 * real files, so that the day can be set; anything else is handed to the system's shell.
 */
final class Shell {
    /** How pages call the reader's home folder. */
    static final String HOME_IN_PAGES = "/home/you";

    private static final String PIPE = " | ";
    private static final String PROGRAM = "sillbook";
    private static final ZoneId ZONE = ZoneOffset.UTC;
    private static final LocalTime MORNING = LocalTime.of(9, 0);

    /** A bare word, or one in either sort of quotes. */
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|'([^']*)'|(\\S+)");

    private final Path home;
    private int code;
    private Instant now = at(LocalDate.of(2026, 9, 1));

    Shell(Path home) {
        this.home = home;
    }

    private static Instant at(LocalDate day) {
        return day.atTime(MORNING).atZone(ZONE).toInstant();
    }

    /** It is the morning of that day. */
    void goOnTo(LocalDate day) {
        now = at(day);
    }

    /** Told once, when first asked for. */
    private static final class TheDemo {
        static final Demo.Told TOLD = Demo.told();
    }

    /** The demo's journal lies where the reader's would, and it is the demo's morning. */
    void layDemo() {
        now = Demo.MOMENT;
        Folders folders = Folders.of(Map.of(), "Linux", home);
        TheDemo.TOLD
                .begin(shelf(folders, Clock.fixed(now, ZONE)), folders.journal())
                .close();
    }

    /** The code with which the program's last command ended. */
    int code() {
        return code;
    }

    /** What comes back, both outputs as they appear. Each command takes a minute, so that none is written at the same instant as another. */
    List<String> type(String line) {
        now = now.plusSeconds(60);
        List<String> words = words(line);
        int pipe = line.indexOf(PIPE);
        if (pipe >= 0) {
            return other(line.substring(pipe + PIPE.length()), String.join("\n", type(line.substring(0, pipe))) + "\n")
                    .lines()
                    .toList();
        }
        String printed = words.get(0).equals(PROGRAM) ? sillbook(words.subList(1, words.size())) : other(line, "");
        return printed.replace(home.toString(), HOME_IN_PAGES).lines().toList();
    }

    private List<String> words(String line) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(line);
        while (word.find()) {
            boolean isBare = word.group(3) != null;
            words.add(
                    isBare
                            ? withoutTilde(word.group(3))
                            : word.group().substring(1, word.group().length() - 1));
        }
        return words;
    }

    private String withoutTilde(String word) {
        return word.startsWith("~/") ? home + word.substring(1) : word;
    }

    private String sillbook(List<String> arguments) {
        Map<String, String> environment = Map.of("LANG", "en_GB.UTF-8");
        Folders folders = Folders.of(environment, "Linux", home);
        var printed = new ByteArrayOutputStream();
        World world = new World(
                environment,
                folders,
                () -> shelf(folders, Clock.fixed(now, ZONE)),
                () -> LocalDate.ofInstant(now, ZONE),
                new ByteArrayInputStream(new byte[0]),
                printed,
                printed);
        code = Commands.run(world, arguments.toArray(String[]::new));
        return printed.toString(UTF_8);
    }

    private static Bookshelf shelf(Folders folders, Clock clock) {
        Forecast forecast = Forecast.by(Handbook.standard());
        return new Bookshelf(
                new SqliteStorage(folders.cache(), new DayReckoning()), clock, Bookshelf.randomIds(), forecast);
    }

    private String other(String line, String input) {
        ProcessBuilder shell = new ProcessBuilder("/bin/sh", "-c", line)
                .directory(home.toFile())
                .redirectErrorStream(true);
        shell.environment().putAll(new HashMap<>(Map.of("HOME", home.toString(), "LC_ALL", "C.UTF-8")));
        try {
            Process process = shell.start();
            process.getOutputStream().write(input.getBytes(UTF_8));
            process.getOutputStream().close();
            return new String(process.getInputStream().readAllBytes(), UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(line, failure);
        }
    }
}
