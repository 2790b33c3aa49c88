// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sillbook.app.Book;
import sillbook.app.Bookshelf;
import sillbook.app.DayReckoning;
import sillbook.app.Result;
import sillbook.change.TakeReading;
import sillbook.change.WriteDown;
import sillbook.model.ChartColumn;
import sillbook.model.Id;
import sillbook.model.LoggerFormat;
import sillbook.model.Place;
import sillbook.model.Place.Sort;
import sillbook.model.Settings.Colours;
import sillbook.model.Temperature;
import sillbook.store.Backups;
import sillbook.store.sqlite.SqliteStorage;
import sillbook.ui.screen.Almanac;
import sillbook.ui.screen.Copy;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.GrowersWinter;
import sillbook.ui.screen.Message;

/** What is done to the open book beside what the screens ask for. */
class BookEffectsTest {
    private static final Instant NOW = Instant.parse("2027-01-12T08:41:00Z");
    private static final LocalDate TODAY = LocalDate.of(2027, 1, 12);

    @TempDir
    private Path folder;

    private final List<Message> answers = new ArrayList<>();

    private Path file() {
        return folder.resolve("journal.sillbook");
    }

    private Book begun() {
        Bookshelf shelf = new Bookshelf(
                new SqliteStorage(folder.resolve("cache"), new DayReckoning()),
                Clock.fixed(NOW, ZoneOffset.UTC),
                Bookshelf.randomIds(),
                (journal, pots, madeOn) -> List.of());
        return shelf.begin(file());
    }

    private void readRest(boolean isDemo) {
        Book book = begun();
        BookEffects.OnTable table = new BookEffects.OnTable(book, new Copy(file().toString(), isDemo, false));
        try (BookEffects effects = new BookEffects(none(), Optional.of(table))) {
            effects.carryOut(new Effect.ReadRest(), answers::add);
        }
    }

    private static BookEffects.Library none() {
        return new BookEffects.Library(
                colours -> noOther(),
                colours -> noOther(),
                name -> noOther(),
                name -> new Message.Failed(name),
                new NoLoggers());
    }

    /** Looks at no file; what is taken in goes on until it is stopped. */
    private static final class NoLoggers implements Loggers {
        @Override
        public Message look(Effect.LookAtLogger asked, Book book) {
            return new Message.Failed(asked.file());
        }

        @Override
        public Result takeIn(Effect.TakeInLogger asked, Book book, BooleanSupplier isStopped, Consumer<Message> soFar) {
            return isStopped.getAsBoolean() ? new Result.Refused("stopped") : new Result.Failed("not stopped");
        }
    }

    private static BookEffects.OnTable noOther() {
        throw new AssertionError("no other book is asked for");
    }

    @Test
    void theBackupOfTheDayIsMadeWhenAllIsShown() {
        readRest(false);

        assertThat(answers).singleElement().isInstanceOf(Message.Changed.class);
        assertThat(Backups.of(file()).ofDay(TODAY)).isRegularFile();
    }

    @Test
    void whatIsTakenInCanBeLeftAndIsTakenInTheNextTime() {
        Effect.TakeInLogger asked = new Effect.TakeInLogger("box.csv", LoggerFormat.OPEN, new Id<>(0, 1));
        Book book = begun();
        BookEffects.OnTable table = new BookEffects.OnTable(book, new Copy(file().toString(), false, false));
        try (BookEffects effects = new BookEffects(none(), Optional.of(table))) {
            effects.interrupt();
            effects.carryOut(asked, answers::add);
            effects.carryOut(new Effect.StopTakingIn(), answers::add);
            effects.interrupt();
            effects.carryOut(new Effect.StopTakingIn(), answers::add);
            effects.carryOut(asked, answers::add);
            effects.carryOut(new Effect.LookAtLogger("box.csv", LoggerFormat.OPEN, new Id<>(0, 1)), answers::add);
        }

        assertThat(answers)
                .containsExactly(
                        new Message.NotTakenIn("stopped"),
                        new Message.NotTakenIn("not stopped"),
                        new Message.Failed("box.csv"));
    }

    @Test
    void whatIsWorkedOutAheadIsNotAnswered() {
        Almanac almanac = Desk.over(GrowersWinter.told().journal()).state().almanac();
        try (BookEffects effects = new BookEffects(none(), Optional.empty())) {
            effects.carryOut(new Effect.ReadAhead(almanac), answers::add);
        }

        assertThat(answers).isEmpty();
    }

    @Test
    void aChartIsReadInItsColumns() {
        Book book = begun();
        Id<Place> cellar = new Id<>(1, 1);
        book.carryOut(new WriteDown(Place.of(cellar, "cellar", Sort.CELLAR)));
        for (int hour = 0; hour < 3; hour++) {
            book.carryOut(new TakeReading(cellar, Temperature.ofCelsius(4 + hour), Optional.of(TODAY.atTime(hour, 0))));
        }
        Instant midnight = NOW.truncatedTo(ChronoUnit.DAYS);
        Effect.ReadChart asked = new Effect.ReadChart(cellar, midnight, midnight.plus(Duration.ofHours(4)), 4);
        BookEffects.OnTable table = new BookEffects.OnTable(book, new Copy(file().toString(), false, false));

        try (BookEffects effects = new BookEffects(none(), Optional.of(table))) {
            effects.carryOut(asked, answers::add);
        }

        assertThat(answers)
                .containsExactly(new Message.ChartRead(
                        asked, List.of(new ChartColumn(0, 4000, 4500, 5000), new ChartColumn(1, 5000, 5500, 6000))));
    }

    @Test
    void aSearchIsStoppedWhateverElseIsBeingDone() {
        List<BookEffects> working = new ArrayList<>();
        BookEffects.Library slow = new BookEffects.Library(
                colours -> noOther(),
                colours -> noOther(),
                name -> noOther(),
                name -> stopping(working.get(0), name),
                new NoLoggers());
        try (BookEffects effects = new BookEffects(slow, Optional.empty())) {
            working.add(effects);
            effects.carryOut(new Effect.ReadTable("list.csv"), answers::add);
            effects.carryOut(SeekerTest.seek(1, 12), answers::add);
        }

        assertThat(answers.get(0)).isEqualTo(new Message.Failed("list.csv"));
        assertThat(SeekerTest.isProven(answers.get(answers.size() - 1))).isFalse();
    }

    /** Stops the first search on another thread, and waits for that. */
    private static Message stopping(BookEffects effects, String name) {
        CompletableFuture.runAsync(() -> effects.carryOut(new Effect.StopSeeking(1), none -> {}))
                .orTimeout(10, TimeUnit.SECONDS)
                .join();
        return new Message.Failed(name);
    }

    @Test
    void aBookThatIsShutEndsItsSearchAndInTheNextTurnsAreCountedAnew() {
        BookEffects.OnTable table = new BookEffects.OnTable(begun(), new Copy(file().toString(), true, false));
        BookEffects.Library demo = new BookEffects.Library(
                colours -> noOther(),
                colours -> table,
                name -> noOther(),
                name -> new Message.Failed(name),
                new NoLoggers());
        BookEffects effects = new BookEffects(demo, Optional.empty());
        effects.close();
        effects.carryOut(SeekerTest.seek(3, 12), answers::add);
        assertThat(SeekerTest.isProven(answers.get(answers.size() - 1))).isFalse();

        effects.carryOut(new Effect.SeeDemo(Colours.EITHER), answers::add);
        effects.carryOut(SeekerTest.seek(1, 1), answers::add);
        assertThat(SeekerTest.isProven(answers.get(answers.size() - 1))).isTrue();
        effects.close();
    }

    @Test
    void aDemoHasNoBackup() {
        readRest(true);

        assertThat(Backups.of(file()).folder()).doesNotExist();
    }

    @Test
    void aBackupThatFailsIsSaidAfterAllIsShown() throws IOException {
        Files.writeString(Backups.of(file()).folder(), "in the way");

        readRest(false);

        assertThat(answers).hasSize(2).first().isInstanceOf(Message.Changed.class);
        assertThat(answers.get(1)).isInstanceOf(Message.Failed.class);
    }
}
