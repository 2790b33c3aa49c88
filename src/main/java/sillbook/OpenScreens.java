// SPDX-License-Identifier: Apache-2.0
package sillbook;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import sillbook.app.Book;
import sillbook.app.Bookshelf;
import sillbook.app.Folders;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.model.Settings;
import sillbook.model.Settings.Colours;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Copy;
import sillbook.ui.screen.Snapshot;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Window;
import sillbook.ui.screen.contents.Sillbook;
import sillbook.ui.terminal.BookEffects;
import sillbook.ui.terminal.BookEffects.OnTable;
import sillbook.ui.terminal.Shell;
import sillbook.ui.terminal.Sitting;
import sillbook.ui.terminal.Surroundings;

/**
 * Opens the full screen: on a journal, on a spare copy of the demo, or, where there is no journal yet, on the first page of all.
 *
 * @param own opens the grower's own journals
 * @param demo makes a spare copy of the demo
 * @param folders where things lie when nobody says
 */
record OpenScreens(Supplier<Bookshelf> own, Function<Colours, Book> demo, Folders folders, Surroundings surroundings) {
    private static final Size BEFORE_IT_IS_KNOWN = new Size(80, 24);

    /** Sits down before a journal, or before the first page where the file is not there yet. */
    Optional<Shell.Ending> onJournal(Path file) throws IOException {
        Bookshelf shelf = own.get();
        return shelf.has(file) ? on(table(shelf.open(file), file)) : onFirstPage(file);
    }

    /** Sits down before a spare copy of the demo. */
    Optional<Shell.Ending> onDemo() throws IOException {
        return on(demoOnTable(Colours.ASK));
    }

    private Optional<Shell.Ending> on(OnTable table) throws IOException {
        State start =
                Sillbook.open(Handbook.standard(), Bookshelf.randomIds(), table.copy(), table.snapshot(), window());
        return sit(start, Optional.of(table), folders.journal());
    }

    private Optional<Shell.Ending> onFirstPage(Path file) throws IOException {
        Journal empty = Journal.empty(Settings.initial(ZoneId.systemDefault()));
        Snapshot nothing = new Snapshot(empty, LocalDate.now(ZoneId.systemDefault()), 0, 0);
        State start = Sillbook.firstRun(Handbook.standard(), Bookshelf.randomIds(), nothing, window(), file.toString());
        return sit(start, Optional.empty(), file);
    }

    private Optional<Shell.Ending> sit(State start, Optional<OnTable> table, Path usual) throws IOException {
        try (BookEffects effects = new BookEffects(library(usual), table)) {
            Supplier<LocalDate> today = () -> effects.onTable()
                    .map(open -> open.book().today())
                    .orElseGet(() -> LocalDate.now(ZoneId.systemDefault()));
            return new Sitting(start, effects, today, folders.state()).sit(surroundings.depth());
        }
    }

    private Window window() {
        return new Window(BEFORE_IT_IS_KNOWN, surroundings.alphabet());
    }

    private BookEffects.Library library(Path usual) {
        return new BookEffects.Library(
                colours -> begun(usual, colours), this::demoOnTable, name -> opened(fromHome(name)));
    }

    private OnTable begun(Path file, Colours colours) {
        Settings settings = Settings.initial(ZoneId.systemDefault()).withColours(colours);
        return table(own.get().begin(file, Journal.empty(settings)), file);
    }

    private OnTable opened(Path file) {
        return table(own.get().open(file), file);
    }

    private OnTable demoOnTable(Colours colours) {
        return new OnTable(demo.apply(colours), new Copy("demo", true, false));
    }

    private static OnTable table(Book book, Path file) {
        Path name = file.getFileName();
        String said = name == null ? file.toString() : name.toString();
        return new OnTable(book, new Copy(said, false, book.isReadOnly()));
    }

    /** A name as a shell would take it: {@code ~/} stands for the home folder. */
    private static Path fromHome(String name) {
        Path home = Path.of(System.getProperty("user.home"));
        return name.startsWith("~/")
                ? home.resolve(name.substring(2))
                : Path.of(name).toAbsolutePath();
    }
}
