// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import sillbook.ui.draw.Frame;
import sillbook.ui.draw.Ground;
import sillbook.ui.draw.Size;

/**
 * A full-screen program as pure functions.
 *
 * @param start the state it begins in
 * @param update what comes of a message
 * @param view what a state looks like in a window of some size
 * @param hear what the program calls an input
 * @param ask who does an effect
 * @param ground on what background a state wants to be read
 */
public record Program<S, M, E>(
        S start,
        BiFunction<S, M, Step<S, E>> update,
        BiFunction<S, Size, Frame> view,
        Function<Input, M> hear,
        Function<E, Doer> ask,
        Function<S, Ground> ground) {

    /** The next state, and what is to be done meanwhile. */
    public record Step<S, E>(S state, List<E> effects) {
        public Step {
            effects = List.copyOf(effects);
        }
    }

    /**
     * Who does an effect: the effects' own thread, which may be told first to stop what it does; a thread beside it, for what may take long and
     * what nothing waits for; or the loop itself in one of three ways.
     */
    public enum Doer {
        EFFECTS,
        ASIDE,
        INTERRUPT,
        LEAVE,
        SUSPEND,
        REDRAW
    }
}
