// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.util.function.Consumer;

/** Carries effects out, one after another, off the thread of the loop. What it throws ends the program as a fault. */
@FunctionalInterface
public interface Effects<M, E> {
    /**
     * Does it.
     *
     * @param answer takes messages for the program, at any time and from any thread
     */
    void carryOut(E effect, Consumer<M> answer);

    /** Stops what is being carried out, where it can be stopped; called on the thread of the loop, meanwhile. */
    default void interrupt() {}
}
