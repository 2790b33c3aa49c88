// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import sillbook.ui.draw.ColourDepth;
import sillbook.ui.draw.Ground;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Screens;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.terminal.Program.Doer;

/**
 * One sitting at the screens, from the first picture until they are left.
 *
 * @param start the state they open in
 * @param effects what they ask for is done by these
 * @param today the day it is, in the zone of the journal that is open
 * @param now the moment it is
 * @param faults the folder for reports of faults
 */
public record Sitting(State start, BookEffects effects, Supplier<LocalDate> today, Supplier<Instant> now, Path faults) {
    /** How long another window's work may stay unseen. */
    private static final long MILLIS_BETWEEN_LOOKS = 1_000;

    /** Every page, the card and the slips opened most, as a terminal sends the keys. */
    private static final List<String> TURNING = List.of(
            "2", "\u001B[B", "\r", "3", "4", "7", "1", "\u001B[B", "l", "T4 roots", "\u0015", "\u001B", "?", "\u001B");

    /** Sits down; empty where there is no terminal to sit at. */
    public Optional<Shell.Ending> sit(ColourDepth depth) throws IOException {
        return Shell.open(depth).map(this::sit);
    }

    /** Turns every page before no terminal, and leaves. */
    public Shell.Ending turnPages() throws IOException {
        return sit(Shell.before(new SlowTypist(TURNING)));
    }

    private Shell.Ending sit(Shell shell) {
        ScheduledExecutorService watch = Executors.newSingleThreadScheduledExecutor(Daemons.named("other windows"));
        try {
            return shell.run(program(), effects, faults, loop -> listen(loop, watch));
        } finally {
            watch.shutdownNow();
        }
    }

    private void listen(Loop<State, Message, Effect> loop, ScheduledExecutorService watch) {
        watch.execute(() -> readRest(loop));
        Midnight.watch(today, day -> loop.tell(new Message.DayBegan(day)));
        // Looking ends with the sitting, which shuts the watch down; nobody waits for its end.
        Future<?> unused = watch.scheduleWithFixedDelay(
                () -> effects.lookAround(loop::tell),
                MILLIS_BETWEEN_LOOKS,
                MILLIS_BETWEEN_LOOKS,
                TimeUnit.MILLISECONDS);
    }

    /** The first picture does with the current season; the rest of the journal follows at once. */
    private void readRest(Loop<State, Message, Effect> loop) {
        if (effects.onTable().isPresent()) {
            effects.carryOut(new Effect.ReadRest(), loop::tell);
        }
    }

    private Program<State, Message, Effect> program() {
        return new Program<>(
                start,
                (state, message) -> step(Screens.update(state.at(now.get()), message)),
                Screens::view,
                Sitting::heard,
                Sitting::doer,
                Sitting::ground);
    }

    private static Program.Step<State, Effect> step(Step step) {
        return new Program.Step<>(step.state(), step.effects());
    }

    private static Message heard(Input input) {
        if (input instanceof Input.Pressed pressed) {
            return new Message.Pressed(pressed.key());
        }
        if (input instanceof Input.Pasted pasted) {
            return new Message.Pasted(pasted.text());
        }
        return new Message.Resized(((Input.Resized) input).size());
    }

    private static Doer doer(Effect effect) {
        if (effect instanceof Effect.Quit) {
            return Doer.LEAVE;
        }
        if (effect instanceof Effect.Suspend) {
            return Doer.SUSPEND;
        }
        if (effect instanceof Effect.StopTakingIn) {
            return Doer.INTERRUPT;
        }
        if (BookEffects.isAside(effect)) {
            return Doer.ASIDE;
        }
        return effect instanceof Effect.Redraw ? Doer.REDRAW : Doer.EFFECTS;
    }

    private static Ground ground(State state) {
        return switch (state.journal().settings().colours()) {
            case DARK -> Ground.DARK;
            case LIGHT -> Ground.LIGHT;
            case NONE -> Ground.NONE;
            case EITHER, ASK -> Ground.EITHER;
        };
    }
}
