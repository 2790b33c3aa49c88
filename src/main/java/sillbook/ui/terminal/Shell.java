// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import sillbook.ui.draw.ColourDepth;

/** Runs a full-screen program on the terminal it was started in, and gives the terminal back whatever happens. */
public final class Shell implements AutoCloseable {
    /** Writes under way are let finish; a computation that goes on and on is not waited for. */
    private static final long SECONDS_FOR_EFFECTS = 10;

    private final TtyTerminal terminal;
    private final Display display;
    private final ColourDepth depth;

    private Shell(TtyTerminal terminal, Display display, ColourDepth depth) {
        this.terminal = terminal;
        this.display = display;
        this.depth = depth;
    }

    /** How a program ended. */
    public sealed interface Ending {
        /** It was left. */
        record Left() implements Ending {}

        /**
         * A fault of its own ended it.
         *
         * @param report the file that tells where, if it could be written
         */
        record Crashed(Throwable fault, Optional<Path> report) implements Ending {
            /** One line for the person who sat before it. */
            public String sentence() {
                String where = report.map(file -> " Where it happened is written in " + file + ".")
                        .orElse(" It was a " + fault.getClass().getName() + ".");
                return "Sillbook was stopped by a fault of its own; what was kept is in the journal." + where;
            }
        }
    }

    /** Takes the terminal and shows its alternate screen; empty where there is no terminal. */
    public static Optional<Shell> open(ColourDepth depth) throws IOException {
        Optional<Stty> stty = Stty.takeTerminal();
        if (stty.isEmpty()) {
            return Optional.empty();
        }
        TtyTerminal terminal = new TtyTerminal(stty.get());
        terminal.enterPrivateMode();
        Display display = new TerminalDisplay(terminal, stty.get().size());
        return Optional.of(new Shell(terminal, display, depth));
    }

    /** Before no terminal: keys come from this stream, pictures go nowhere. */
    static Shell before(InputStream keys) throws IOException {
        TtyTerminal terminal = TtyTerminal.nowhere(keys);
        terminal.enterPrivateMode();
        return new Shell(terminal, new TerminalDisplay(terminal, Stty.NONE.size()), ColourDepth.INDEXED_256);
    }

    /**
     * Runs the program to its end; then the terminal is as it was before.
     *
     * @param faults the folder for reports of faults
     * @param started is given the loop once the first picture stands, for those who have news for it
     */
    public <S, M, E> Ending run(
            Program<S, M, E> program, Effects<M, E> effects, Path faults, Consumer<Loop<S, M, E>> started) {
        ExecutorService worker = Executors.newSingleThreadExecutor(Daemons.named("effects"));
        try {
            Loop<S, M, E> loop = new Loop<>(program, effects, worker, display, depth);
            listen(loop);
            loop.turn();
            started.accept(loop);
            loop.run();
            finish(worker);
            close();
            return new Ending.Left();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            close();
            return new Ending.Left();
        } catch (Throwable fault) {
            close();
            return new Ending.Crashed(fault, CrashReport.write(faults, fault));
        } finally {
            worker.shutdownNow();
        }
    }

    private <S, M, E> void listen(Loop<S, M, E> loop) {
        terminal.onResize(size -> loop.hear(new Input.Resized(size)));
        Daemons.named("keys").newThread(() -> readKeys(loop)).start();
    }

    /** The end of input is the end of the terminal, and of the program. */
    private void readKeys(Loop<?, ?, ?> loop) {
        try {
            new KeyReader(terminal.keys(), loop::hear).readAll();
            loop.leave();
        } catch (IOException gone) {
            loop.leave();
        } catch (RuntimeException | Error fault) {
            loop.fail(fault);
        }
    }

    private static void finish(ExecutorService worker) throws InterruptedException {
        worker.shutdown();
        worker.awaitTermination(SECONDS_FOR_EFFECTS, TimeUnit.SECONDS);
    }

    /** Gives the terminal back; best effort, as the terminal may be what failed. Once is enough, more does no harm. */
    @Override
    public void close() {
        try {
            terminal.close();
        } catch (IOException | IllegalStateException gone) {
            // Either no terminal is left to give back, or the JVM is ending and its hook gives it back.
        }
    }
}
