// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import sillbook.app.Book;
import sillbook.app.Result;
import sillbook.model.Settings.Colours;
import sillbook.store.Steps;
import sillbook.store.StoreException;
import sillbook.ui.screen.Copy;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Snapshot;
import sillbook.ui.screen.TakenStep;

/** Does to the open book what the screens ask for, and opens another one when they ask for that. */
public final class BookEffects implements Effects<Message, Effect>, AutoCloseable {
    private final Library library;
    private Optional<OnTable> open;
    /** Of the open book: in another one turns are counted anew. */
    private volatile Seeker seeker = new Seeker();

    private volatile boolean isStopped;

    /** A book on the table, and how it lies there. */
    public record OnTable(Book book, Copy copy) {
        /** What the screens are shown of it at this moment. */
        public Snapshot snapshot() {
            Steps counted = book.steps(0, 0);
            int toTakeBack = counted.all() - counted.takenBack();
            return new Snapshot(book.journal(), book.now(), toTakeBack, counted.takenBack());
        }
    }

    /**
     * Where books come from. What cannot be opened is refused with a {@link StoreException}.
     *
     * @param begin makes a journal in the usual place, in these colours
     * @param demo makes a spare copy of the demo, in these colours
     * @param file opens the journal in the file of that name
     * @param table reads the table in the file of that name, and says what came of it
     * @param loggers reads the files of thermometers
     */
    public record Library(
            Function<Colours, OnTable> begin,
            Function<Colours, OnTable> demo,
            Function<String, OnTable> file,
            Function<String, Message> table,
            Loggers loggers) {}

    public BookEffects(Library library, Optional<OnTable> open) {
        this.library = library;
        this.open = open;
    }

    @Override
    public void carryOut(Effect effect, Consumer<Message> answer) {
        if (isAside(effect)) {
            effect.fold(new Deeds(answer)).ifPresent(answer);
        } else {
            inTurn(effect, answer);
        }
    }

    /** What asks nothing of the book, and so waits for nothing that is done to it. */
    static boolean isAside(Effect effect) {
        return effect instanceof Effect.Seek || effect instanceof Effect.StopSeeking;
    }

    private synchronized void inTurn(Effect effect, Consumer<Message> answer) {
        try {
            effect.fold(new Deeds(answer)).ifPresent(answer);
            if (effect instanceof Effect.ReadRest) {
                open.map(OnTable::book).ifPresent(Book::lookThrough);
                backUpOnceADay();
            }
        } catch (StoreException failure) {
            answer.accept(new Message.Failed(failure.sentence()));
        }
    }

    @Override
    public void interrupt() {
        isStopped = true;
    }

    /** The screens have all they show by then, so nobody waits for it. A demo is not worth a copy. */
    private void backUpOnceADay() {
        open.filter(table -> !table.copy().isDemo()).map(OnTable::book).ifPresent(Book::backUpOnceADay);
    }

    /** Tells what another window wrote, if one did. */
    public synchronized void lookAround(Consumer<Message> answer) {
        try {
            open.filter(table -> table.book().refresh())
                    .ifPresent(table -> answer.accept(new Message.Changed(table.snapshot())));
        } catch (StoreException failure) {
            answer.accept(new Message.Failed(failure.sentence()));
        }
    }

    /** The book the screens are on, if one is open. */
    public synchronized Optional<OnTable> onTable() {
        return open;
    }

    @Override
    public void close() {
        seeker.close();
        closeBook();
    }

    private synchronized void closeBook() {
        open.ifPresent(table -> table.book().close());
        open = Optional.empty();
    }

    private OnTable table() {
        return open.orElseThrow(() -> new IllegalStateException("the screens ask for a book before one is open"));
    }

    /** Each effect done, with the answer it gives. */
    private final class Deeds implements Effect.Cases<Optional<Message>> {
        private final Consumer<Message> meanwhile;

        Deeds(Consumer<Message> meanwhile) {
            this.meanwhile = meanwhile;
        }

        @Override
        public Optional<Message> carryOut(Effect.CarryOut effect) {
            return answer(table().book().carryOut(effect.change()), name -> name + ".", false);
        }

        @Override
        public Optional<Message> takeBack(Effect.TakeBack effect) {
            return turn(effect.steps(), Book::takeBack, "Taken back");
        }

        @Override
        public Optional<Message> putBack(Effect.PutBack effect) {
            return turn(effect.steps(), Book::putBack, "Put back");
        }

        /** Several steps one after another; the first that fails ends it. */
        private Optional<Message> turn(int steps, Function<Book, Result> once, String done) {
            Result last = once.apply(table().book());
            for (int more = 1; more < steps && last instanceof Result.Done; more++) {
                last = once.apply(table().book());
            }
            String what = steps == 1 ? done + ": " : done + " " + steps + " steps, the last: ";
            return answer(last, name -> what + name + ".", true);
        }

        private Optional<Message> answer(Result result, UnaryOperator<String> sentence, boolean wasBack) {
            if (result instanceof Result.Done done) {
                return Optional.of(new Message.Kept(sentence.apply(done.step()), wasBack, table().snapshot()));
            }
            if (result instanceof Result.Refused refused) {
                return Optional.of(new Message.Refused(refused.sentence()));
            }
            return Optional.of(new Message.Failed(((Result.Failed) result).sentence()));
        }

        @Override
        public Optional<Message> listSteps(Effect.ListSteps effect) {
            Book book = table().book();
            ZoneId zone = book.journal().settings().zone();
            List<TakenStep> steps = book.steps(effect.from(), effect.howMany()).stretch().stream()
                    .map(step -> new TakenStep(
                            step.name(), LocalDateTime.ofInstant(step.writtenAt(), zone), step.isTakenBack()))
                    .toList();
            return Optional.of(new Message.StepsListed(steps));
        }

        @Override
        public Optional<Message> readRest(Effect.ReadRest effect) {
            table().book().readAll();
            return Optional.of(new Message.Changed(table().snapshot()));
        }

        @Override
        public Optional<Message> beginJournal(Effect.BeginJournal effect) {
            return opened(library.begin().apply(effect.colours()));
        }

        @Override
        public Optional<Message> seeDemo(Effect.SeeDemo effect) {
            return opened(library.demo().apply(effect.colours()));
        }

        @Override
        public Optional<Message> openJournal(Effect.OpenJournal effect) {
            return opened(library.file().apply(effect.file()));
        }

        private Optional<Message> opened(OnTable other) {
            close();
            seeker = new Seeker();
            open = Optional.of(other);
            other.book().readAll();
            return Optional.of(new Message.Opened(other.copy(), other.snapshot()));
        }

        @Override
        public Optional<Message> readTable(Effect.ReadTable effect) {
            return Optional.of(library.table().apply(effect.file()));
        }

        @Override
        public Optional<Message> lookAtLogger(Effect.LookAtLogger effect) {
            return Optional.of(library.loggers().look(effect, table().book()));
        }

        @Override
        public Optional<Message> takeInLogger(Effect.TakeInLogger effect) {
            Result result = library.loggers().takeIn(effect, table().book(), () -> isStopped, meanwhile);
            return result instanceof Result.Done
                    ? answer(result, name -> name + ".", false)
                    : Optional.of(new Message.NotTakenIn(sentence(result)));
        }

        private static String sentence(Result result) {
            return result instanceof Result.Refused refused ? refused.sentence() : ((Result.Failed) result).sentence();
        }

        /** Done by {@link #interrupt} already. It comes after what was stopped, and what comes next is not. */
        @Override
        public Optional<Message> stopTakingIn(Effect.StopTakingIn effect) {
            isStopped = false;
            return Optional.empty();
        }

        @Override
        public Optional<Message> average(Effect.Average effect) {
            return Optional.of(effect.answer());
        }

        @Override
        public Optional<Message> readAhead(Effect.ReadAhead effect) {
            effect.work();
            return Optional.empty();
        }

        @Override
        public Optional<Message> readKept(Effect.ReadKept effect) {
            return Optional.of(effect.answer(table().book().keptWindows()));
        }

        @Override
        public Optional<Message> readChart(Effect.ReadChart effect) {
            return Optional.of(new Message.ChartRead(
                    effect,
                    table().book().chart(effect.place(), effect.from(), effect.toExclusive(), effect.columns())));
        }

        @Override
        public Optional<Message> seek(Effect.Seek effect) {
            return Optional.of(seeker.seek(effect, meanwhile));
        }

        @Override
        public Optional<Message> stopSeeking(Effect.StopSeeking effect) {
            seeker.stop(effect.turn());
            return Optional.empty();
        }

        @Override
        public Optional<Message> quit(Effect.Quit effect) {
            return Optional.empty();
        }

        @Override
        public Optional<Message> suspend(Effect.Suspend effect) {
            return Optional.empty();
        }

        @Override
        public Optional<Message> redraw(Effect.Redraw effect) {
            return Optional.empty();
        }
    }
}
