// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.util.List;
import java.util.Optional;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Size;

/**
 * A page, or something that lies over one: a card, a slip, a form, help. Layers are values; what a key makes of one is a new one in
 * the next state.
 */
public interface Layer {

    /** How it shows itself in a body of that size, foot included. */
    Look look(State state, Size body);

    /** What can be done here and by which keys, in the order help lists it; what holds everywhere is not repeated. */
    List<Offer> offers(State state);

    /** Takes a key that is text here, before any offer; empty when the key is none. */
    default Optional<Step> type(State state, Key key) {
        return Optional.empty();
    }

    /** Takes pasted text; outside fields it is nothing. */
    default Step paste(State state, String text) {
        return Step.to(state);
    }

    /** Whether letters are text here, so that only keys with names are commands. */
    default boolean takesText() {
        return false;
    }

    /** This layer in a state that changed around it. */
    default Layer settled(State before, State after, Cause cause) {
        return this;
    }

    /** Under which name it waits when it is left half done; empty when there is nothing worth waiting for. */
    default Optional<String> draftName() {
        return Optional.empty();
    }

    /** Steps that were asked for with {@link Effect.ListSteps}. */
    default Layer listed(State state, Message.StepsListed steps) {
        return this;
    }

    /** Why the state changed. */
    enum Cause {
        /** The grower acted here: the cursor keeps its line, so that the next thing comes under it. */
        ACT,
        /** A step was taken back or put back: the cursor goes to what came back. */
        BACK,
        /** Something changed elsewhere, or the day: the cursor keeps its thing. */
        ELSEWHERE,
        /** The window has another size. */
        RESIZE
    }
}
