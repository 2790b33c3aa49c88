// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Executor;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.atomic.AtomicInteger;
import sillbook.ui.draw.ColourDepth;
import sillbook.ui.draw.Ground;
import sillbook.ui.draw.Palette;
import sillbook.ui.draw.Size;

/**
 * The one loop of the full screen: takes all that waits, lets the program answer it, draws once. Everything in it happens on the thread
 * that calls {@link #run} or {@link #turn}; other threads only put something into its queue.
 */
public final class Loop<S, M, E> {
    private static final Executor ASIDE =
            task -> Daemons.named("aside").newThread(task).start();

    private final Program<S, M, E> program;
    private final Effects<M, E> effects;
    private final Executor worker;
    private final Display display;
    private final ColourDepth depth;
    private final BlockingQueue<Runnable> waiting = new LinkedBlockingQueue<>();
    private final AtomicInteger undone = new AtomicInteger();

    private final Map<Ground, Palette> palettes = new EnumMap<>(Ground.class);

    private S state;
    private Size size;
    private boolean stale = true;
    private boolean over;

    public Loop(Program<S, M, E> program, Effects<M, E> effects, Executor worker, Display display, ColourDepth depth) {
        this.program = program;
        this.effects = effects;
        this.worker = worker;
        this.display = display;
        this.depth = depth;
        state = program.start();
        size = display.size();
        tell(program.hear().apply(new Input.Resized(size)));
    }

    /** Puts a message into the queue; from any thread. */
    public void tell(M message) {
        waiting.add(() -> step(message));
    }

    /** Puts what the person did into the queue; from any thread. */
    public void hear(Input input) {
        if (input instanceof Input.Resized resized) {
            waiting.add(() -> resize(resized.size()));
        }
        tell(program.hear().apply(input));
    }

    /** Ends the loop as soon as what waits before is done; from any thread. */
    public void leave() {
        waiting.add(() -> over = true);
    }

    /** Ends the loop with a fault that happened on another thread. */
    public void fail(Throwable fault) {
        waiting.add(() -> {
            throw new IllegalStateException("a thread beside the loop failed", fault);
        });
    }

    /** Runs until the program is left. */
    public void run() throws InterruptedException {
        while (turn()) {
            Runnable first = waiting.take();
            first.run();
        }
    }

    /** Does what waits now and draws if anything came of it; gives whether the program goes on. Never waits. */
    public boolean turn() {
        List<Runnable> all = new ArrayList<>();
        while (!over && waiting.drainTo(all) > 0) {
            all.stream().takeWhile(any -> !over).forEach(Runnable::run);
            all.clear();
        }
        if (stale && !over) {
            draw();
        }
        return !over;
    }

    /** Whether nothing waits, nothing is being done, and what is shown is what is so. */
    public boolean isIdle() {
        return waiting.isEmpty() && undone.get() == 0 && !stale;
    }

    private void step(M message) {
        Program.Step<S, E> step = program.update().apply(state, message);
        state = step.state();
        stale = true;
        step.effects().forEach(this::start);
    }

    private void start(E effect) {
        switch (program.ask().apply(effect)) {
            case LEAVE -> over = true;
            case REDRAW -> redraw();
            case SUSPEND -> suspend();
            case INTERRUPT -> {
                effects.interrupt();
                carryOut(effect, worker);
            }
            case EFFECTS -> carryOut(effect, worker);
            case ASIDE -> carryOut(effect, ASIDE);
        }
    }

    private void redraw() {
        display.forget();
        stale = true;
    }

    private void suspend() {
        display.suspend();
        hear(new Input.Resized(display.size()));
        stale = true;
    }

    private void carryOut(E effect, Executor by) {
        undone.incrementAndGet();
        by.execute(() -> {
            try {
                effects.carryOut(effect, this::tell);
            } catch (RuntimeException | Error fault) {
                fail(fault);
            } finally {
                undone.decrementAndGet();
            }
        });
    }

    private void resize(Size now) {
        size = now;
        stale = true;
    }

    private void draw() {
        stale = false;
        Palette palette = palettes.computeIfAbsent(program.ground().apply(state), it -> Palette.of(it, depth));
        display.show(program.view().apply(state, size), palette);
    }
}
