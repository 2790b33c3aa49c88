// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.io.InputStream;
import java.util.Optional;
import java.util.function.ToIntFunction;
import sillbook.app.Book;
import sillbook.app.Bookshelf;
import sillbook.app.Result;
import sillbook.exchange.LoggerJson;
import sillbook.exchange.logger.Beside;
import sillbook.exchange.logger.LoggerFeed;
import sillbook.exchange.logger.LoggerFile;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.store.Delivery;
import sillbook.words.Counts;
import sillbook.words.line.PlaceCalled;
import sillbook.words.logger.Compared;
import sillbook.words.logger.Counted;
import sillbook.words.logger.CountedWords;
import sillbook.words.logger.UnderstoodWords;

/** Takes in the file of a thermometer: says what it was understood as, then what it comes to. */
final class LoggerImport {
    private static final String NOTHING = "Nothing is imported.";
    private static final String ALL_KNOWN = "All that it says is in the book already.";
    private static final String KEPT_BESIDE = "What you said of it is kept for the next file like it.";

    private final Books books;
    private final Printer printer;
    private final FileIn in;
    private final LoggerOptions options;
    private final boolean inJson;

    LoggerImport(Books books, Printer printer, String file, InputStream in, LoggerOptions options, boolean inJson) {
        this.books = books;
        this.printer = printer;
        this.in = new FileIn(file, in);
        this.options = options;
        this.inJson = inJson;
    }

    /**
     * Takes in what lies at that place.
     *
     * @param isTrial whether it is only said what would come of it
     */
    int of(String placeName, boolean isTrial) {
        Journal journal = books.rehearsal().readAll();
        Place place = CouldNot.unless(PlaceCalled.find(journal, placeName));
        LoggerFile file = look(journal, place);
        if (!file.understood().questions().isEmpty()) {
            return ask(place, file);
        }
        Work work = new Work(place, file);
        ToIntFunction<Book> deed = isTrial ? work::tryOut : work::takeIn;
        return books.with(deed);
    }

    private LoggerFile look(Journal journal, Place place) {
        return LoggerFile.look(
                        in.source(),
                        options.format(),
                        journal.loggerProfilesAt(place.id()),
                        journal.settings().zone())
                .fold(file -> file, why -> {
                    throw new CouldNot(in.name() + ": " + why.sentence() + " " + NOTHING);
                });
    }

    /** What nobody may guess is asked, and nothing imported. */
    private int ask(Place place, LoggerFile file) {
        UnderstoodWords words = new UnderstoodWords(file.understood());
        if (inJson) {
            printer.json(LoggerJson.asking(place, file.understood()));
        } else {
            say(place, words);
        }
        LoggerOptions.asked(file.understood()).forEach(printer::say);
        printer.say(NOTHING);
        return ExitCode.COULD_NOT;
    }

    private void say(Place place, UnderstoodWords words) {
        words.facts().forEach(fact -> printer.line(fact.topic().word() + ": " + fact.says()));
        printer.line("place: " + place.name()
                + words.calledThere()
                        .map(called -> "; its thermometer is " + called)
                        .orElse(""));
    }

    /** A file that leaves nothing open, and the book it is for. */
    private final class Work {
        private final Place place;
        private final LoggerFile file;

        Work(Place place, LoggerFile file) {
            this.place = place;
            this.file = file;
        }

        int tryOut(Book book) {
            try (LoggerFeed feed = file.feed(book.now())) {
                Compared compared = Beside.of(book.compare(delivery(feed), quarters()));
                say(book, feed.counted(), compared, Optional.empty());
                return ExitCode.DONE;
            }
        }

        int takeIn(Book book) {
            Quarters quarters = quarters();
            try (LoggerFeed feed = file.feed(book.now())) {
                Delivery delivery = delivery(feed);
                Result result = book.takeIn(delivery, quarters);
                if (result instanceof Result.Done done) {
                    Compared compared = Beside.of(quarters.last().orElseThrow());
                    say(book, feed.counted(), compared, Optional.of(done.step()));
                    if (!inJson && !delivery.beside().isEmpty()) {
                        printer.line(KEPT_BESIDE);
                    }
                    return ExitCode.DONE;
                }
                return notTakenIn(result, quarters);
            }
        }

        private Delivery delivery(LoggerFeed feed) {
            return file.delivery(place.id(), in.shortName(), feed, Bookshelf.randomIds());
        }

        private Quarters quarters() {
            return new Quarters(printer, in.shortName(), file.lines());
        }

        /** The same bytes once more are no failure. */
        private int notTakenIn(Result result, Quarters quarters) {
            if (result instanceof Result.Failed failed) {
                throw new CouldNot(failed.sentence());
            }
            if (result instanceof Result.Refused refused && quarters.last().isEmpty()) {
                throw new CouldNot(refused.sentence());
            }
            return quarters.last().filter(read -> read.readings() == 0).isPresent() ? nothingRead() : knownAlready();
        }

        private int knownAlready() {
            if (inJson) {
                printer.json(LoggerJson.known(place, file.understood()));
            }
            printer.say(ALL_KNOWN);
            return ExitCode.DONE;
        }

        private int nothingRead() {
            throw new CouldNot(in.name() + ": No line of it has a temperature. " + NOTHING);
        }

        private void say(Book book, Counted counted, Compared compared, Optional<String> step) {
            if (inJson) {
                printer.json(LoggerJson.counted(place, file.understood(), counted, compared, step));
                return;
            }
            LoggerImport.this.say(place, new UnderstoodWords(file.understood()));
            Journal journal = book.journal();
            new CountedWords(
                            counted,
                            journal.settings().zone(),
                            journal.settings().temperatures())
                    .lines(Optional.of(compared))
                    .forEach(line -> printer.line(
                            (line.wants() ? "! " : "") + Counts.grouped(line.count()) + " " + line.says()));
            step.ifPresent(printer::line);
        }
    }
}
