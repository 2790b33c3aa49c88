// SPDX-License-Identifier: Apache-2.0
package sillbook;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import sillbook.app.Book;
import sillbook.app.Bookshelf;
import sillbook.app.demo.Demo;
import sillbook.cli.ExitCode;
import sillbook.handbook.Handbook;
import sillbook.model.Edit;
import sillbook.model.Journal;
import sillbook.model.Settings;
import sillbook.model.Settings.Colours;
import sillbook.store.StoreException;
import sillbook.text.Safe;
import sillbook.ui.screen.Copy;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Snapshot;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Window;
import sillbook.ui.screen.contents.Sillbook;
import sillbook.ui.terminal.BookEffects;
import sillbook.ui.terminal.BookEffects.Library;
import sillbook.ui.terminal.BookEffects.OnTable;
import sillbook.ui.terminal.ColourWish;
import sillbook.ui.terminal.Shell;
import sillbook.ui.terminal.Sitting;
import sillbook.ui.terminal.Surroundings;

/** Opens the screens: over a journal, over the demo, or, where there is no journal yet, at the first run. */
final class Reception {
    private final Wiring wiring;
    private final Path usualFile;

    /** @param usualFile the journal that is opened, or begun */
    Reception(Wiring wiring, Path usualFile) {
        this.wiring = wiring;
        this.usualFile = usualFile;
    }

    /** The screens over the journal, or at the first run. */
    int openJournal() {
        return open(() -> wiring.shelf().has(usualFile) ? Optional.of(open(usualFile)) : Optional.empty());
    }

    /** The screens over a spare copy of the demo. */
    int openDemo() {
        return open(() -> Optional.of(demo(Colours.ASK)));
    }

    /** How the first book comes onto the table; a {@link StoreException} says that it cannot. */
    private interface First {
        Optional<OnTable> book();
    }

    private int open(First first) {
        try (BookEffects effects = new BookEffects(library(), first.book())) {
            return sit(effects);
        } catch (StoreException refused) {
            return sorry(refused.sentence());
        } catch (IOException failure) {
            return sorry("The terminal could not be used: " + failure.getMessage() + ".");
        }
    }

    private Library library() {
        return new Library(
                this::begin,
                this::demo,
                name -> open(Path.of(name)),
                this::table,
                new NamedLogger(wiring.environment()));
    }

    private OnTable begin(Colours colours) {
        Settings settings = in(colours, Settings.initial(wiring.clock().getZone()));
        return onTable(wiring.shelf().begin(usualFile, Journal.empty(settings)), usualFile);
    }

    private OnTable open(Path file) {
        return onTable(wiring.shelf().open(file), file);
    }

    private Message table(String name) {
        return NamedFile.read(name, wiring.environment());
    }

    private static OnTable onTable(Book book, Path file) {
        return new OnTable(book, new Copy(String.valueOf(file.getFileName()), false, book.isReadOnly()));
    }

    private OnTable demo(Colours colours) {
        Demo.Told told = Demo.told();
        Edit inColours = new Edit.Put(in(colours, told.journal().settings()));
        Book book = told.spare(wiring.demoShelf(), inColours);
        return new OnTable(book, new Copy("demo.sillbook", true, false));
    }

    private static Settings in(Colours colours, Settings settings) {
        return new Settings(
                settings.zone(),
                settings.seasonStart(),
                settings.temperatures(),
                settings.lengths(),
                colours,
                settings.dailyCare());
    }

    /** Turns the pages of the journal, which is a copy of the demo, before no terminal. */
    Shell.Ending turnPages() throws IOException {
        OnTable copy = onTable(wiring.demoShelf().open(usualFile), usualFile);
        try (BookEffects effects = new BookEffects(library(), Optional.of(copy))) {
            return sitting(effects, around()).turnPages();
        }
    }

    private int sit(BookEffects effects) throws IOException {
        Surroundings around = around();
        Optional<Shell.Ending> ending = sitting(effects, around).sit(around.depth());
        if (ending.isPresent() && ending.get() instanceof Shell.Ending.Crashed crashed) {
            return sorry(crashed.sentence());
        }
        return ending.isPresent() ? ExitCode.DONE : ExitCode.USED_WRONGLY;
    }

    private Surroundings around() {
        return Surroundings.of(wiring.environment(), ColourWish.AUTO, true);
    }

    private Sitting sitting(BookEffects effects, Surroundings around) {
        Window window = new Window(Window.SMALLEST, around.alphabet());
        return new Sitting(
                start(effects, window),
                effects,
                () -> today(effects),
                () -> wiring.clock().instant(),
                wiring.folders().state());
    }

    private State start(BookEffects effects, Window window) {
        Handbook handbook = Handbook.standard();
        return effects.onTable()
                .map(table -> Sillbook.open(handbook, Bookshelf.randomIds(), table.copy(), table.snapshot(), window))
                .orElseGet(() ->
                        Sillbook.firstRun(handbook, Bookshelf.randomIds(), nothingYet(), window, usualFile.toString()));
    }

    private Snapshot nothingYet() {
        Clock clock = wiring.clock();
        return new Snapshot(Journal.empty(Settings.initial(clock.getZone())), LocalDate.now(clock), 0, 0);
    }

    private LocalDate today(BookEffects effects) {
        return effects.onTable().map(table -> table.book().today()).orElseGet(() -> LocalDate.now(wiring.clock()));
    }

    private static int sorry(String sentence) {
        System.err.println(Safe.text(sentence));
        return ExitCode.COULD_NOT;
    }
}
