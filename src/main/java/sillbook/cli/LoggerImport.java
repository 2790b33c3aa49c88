// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.io.InputStream;
import java.util.Optional;
import sillbook.app.Rehearsal;
import sillbook.exchange.LoggerJson;
import sillbook.exchange.logger.LoggerFeed;
import sillbook.exchange.logger.LoggerFile;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.words.Counts;
import sillbook.words.line.PlaceCalled;
import sillbook.words.logger.Counted;
import sillbook.words.logger.CountedWords;
import sillbook.words.logger.Understood.Question;
import sillbook.words.logger.UnderstoodWords;

/** Takes in the file of a thermometer: says what it was understood as, then what it comes to. */
final class LoggerImport {
    private final Books books;
    private final Printer printer;
    private final LoggerIn in;
    private final LoggerOptions options;
    private final boolean inJson;

    LoggerImport(Books books, Printer printer, String file, InputStream in, LoggerOptions options, boolean inJson) {
        this.books = books;
        this.printer = printer;
        this.in = new LoggerIn(file, in);
        this.options = options;
        this.inJson = inJson;
    }

    /** Says what a file comes to that lies at that place. */
    int tryOut(String placeName) {
        Rehearsal journal = books.rehearsal();
        Place place = place(journal.readAll(), placeName);
        LoggerFile file = look(journal.readAll());
        if (!file.understood().questions().isEmpty()) {
            return ask(place, file);
        }
        say(place, journal.readAll(), file, count(file));
        return ExitCode.DONE;
    }

    private static Place place(Journal journal, String name) {
        return PlaceCalled.find(journal, name).fold(found -> found, not -> {
            throw new CouldNot(not.sentence());
        });
    }

    private LoggerFile look(Journal journal) {
        return LoggerFile.look(in.source(), options.format(), journal.settings().zone())
                .fold(file -> file, why -> {
                    throw new CouldNot(in.name() + ": " + why.sentence() + " Nothing is imported.");
                });
    }

    private static Counted count(LoggerFile file) {
        try (LoggerFeed feed = file.feed()) {
            while (feed.advance()) {}
            return feed.counted();
        }
    }

    /** What nobody may guess is asked, and nothing imported. */
    private int ask(Place place, LoggerFile file) {
        UnderstoodWords words = new UnderstoodWords(file.understood());
        if (inJson) {
            printer.json(LoggerJson.asking(place, file.understood()));
        } else {
            say(words);
        }
        file.understood()
                .questions()
                .forEach(question -> printer.say(words.asks(question) + " " + advice(question, words)));
        printer.say("Nothing is imported.");
        return ExitCode.COULD_NOT;
    }

    private static String advice(Question question, UnderstoodWords words) {
        return switch (question) {
            case DATES ->
                "Say which: "
                        + Counts.or(words.ordersTyped().stream()
                                .map(order -> "--dates " + order)
                                .toList()) + ".";
            case COLUMN -> "Say which: --column and its number.";
            case DEVICE -> "Say whose: --device and its name.";
        };
    }

    private void say(UnderstoodWords words) {
        words.facts().forEach(fact -> printer.line(fact.topic().word() + ": " + fact.says()));
    }

    private void say(Place place, Journal journal, LoggerFile file, Counted counted) {
        if (inJson) {
            printer.json(LoggerJson.counted(place, file.understood(), counted, Optional.empty()));
            return;
        }
        say(new UnderstoodWords(file.understood()));
        new CountedWords(counted, journal.settings().zone(), journal.settings().temperatures())
                .lines()
                .forEach(line ->
                        printer.line((line.wants() ? "! " : "") + Counts.grouped(line.count()) + " " + line.says()));
    }
}
