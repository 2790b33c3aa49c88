// SPDX-License-Identifier: Apache-2.0
package sillbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import sillbook.app.Book;
import sillbook.app.Bookshelf;
import sillbook.app.Result;
import sillbook.exchange.logger.Beside;
import sillbook.exchange.logger.LoggerFeed;
import sillbook.exchange.logger.LoggerFile;
import sillbook.exchange.logger.Source;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.LoggerFormat;
import sillbook.model.Place;
import sillbook.store.Comparison;
import sillbook.store.Progress;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Message;
import sillbook.ui.terminal.Loggers;
import sillbook.words.Heard;
import sillbook.words.logger.Looked;

/** Thermometers' files that are named on the screens. */
record NamedLogger(Map<String, String> environment) implements Loggers {

    /** One that is named. */
    private record Named(Path file, Heard<LoggerFile> heard) {
        String name() {
            return NamedFile.shortName(file);
        }

        /** Empty at the least: it could be read a moment ago. */
        long bytes() {
            try {
                return Files.size(file);
            } catch (IOException gone) {
                return 0;
            }
        }

        <R> R fold(Function<LoggerFile, R> read, Function<String, R> not) {
            return heard.fold(read, why -> not.apply(name() + ": " + why.sentence()));
        }
    }

    private Named named(String file, LoggerFormat told, Id<Place> place, Book book) {
        Path path = NamedFile.path(file, environment);
        Journal journal = book.journal();
        return new Named(
                path,
                LoggerFile.look(
                        Source.of(path),
                        told,
                        journal.loggerProfilesAt(place),
                        journal.settings().zone()));
    }

    @Override
    public Message look(Effect.LookAtLogger asked, Book book) {
        try {
            Named named = named(asked.file(), asked.told(), asked.place(), book);
            return named.fold(
                    file -> new Message.LoggerLookedAt(looked(asked, named, file, book)), Message.Failed::new);
        } catch (InvalidPathException wrong) {
            return new Message.Failed("'" + asked.file() + "' cannot be the name of a file. Name another.");
        } catch (UncheckedIOException gone) {
            return new Message.Failed(unreadable(asked.file()));
        }
    }

    /** As of a stick that was pulled out while it was read. */
    private static String unreadable(String file) {
        return file + ": It could be read no longer, and nothing of it is kept.";
    }

    private static Looked looked(Effect.LookAtLogger asked, Named named, LoggerFile file, Book book) {
        Looked open = Looked.open(asked.file(), named.name(), named.bytes(), asked.told(), file.understood());
        if (!file.understood().questions().isEmpty()) {
            return open;
        }
        try (LoggerFeed feed = file.feed(book.now())) {
            Comparison found = book.compare(
                    file.delivery(asked.place(), named.name(), feed, Bookshelf.randomIds()), Progress.UNWATCHED);
            return open.with(feed.counted(), Beside.of(found));
        }
    }

    @Override
    public Result takeIn(Effect.TakeInLogger asked, Book book, BooleanSupplier isStopped, Consumer<Message> soFar) {
        try {
            Named named = named(asked.file(), asked.told(), asked.place(), book);
            return named.fold(file -> takeIn(asked, named, file, book, isStopped, soFar), Result.Failed::new);
        } catch (UncheckedIOException gone) {
            return new Result.Failed(unreadable(asked.file()));
        }
    }

    private static Result takeIn(
            Effect.TakeInLogger asked,
            Named named,
            LoggerFile file,
            Book book,
            BooleanSupplier isStopped,
            Consumer<Message> soFar) {
        Watch watch = new Watch(file.lines(), book::now, isStopped, soFar);
        try (LoggerFeed feed = file.feed(book.now())) {
            Result result = book.takeIn(file.delivery(asked.place(), named.name(), feed, Bookshelf.randomIds()), watch);
            return watch.wasStopped()
                    ? new Result.Refused("It was left; nothing of " + named.name() + " is kept.")
                    : result;
        }
    }
}
