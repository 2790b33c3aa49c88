// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.util.List;
import java.util.stream.Stream;
import sillbook.change.Change;

/** What comes of a message: the next state, and what the shell is asked to do. */
public record Step(State state, List<Effect> effects) {

    public Step {
        effects = List.copyOf(effects);
    }

    public static Step to(State state) {
        return new Step(state, List.of());
    }

    public static Step to(State state, Effect effect) {
        return new Step(state, List.of(effect));
    }

    /** The next state of another step, and what both ask for. */
    Step then(Step next) {
        return new Step(
                next.state(),
                Stream.concat(effects.stream(), next.effects().stream()).toList());
    }

    /** Asks for a change; when it is kept, what lies over the page goes down to so many layers. */
    public static Step keep(State state, Change change, int layersAfter) {
        return asking(state, new Effect.CarryOut(change), layersAfter);
    }

    /** Asks for an effect that writes. A second one waits until the first is answered: keys may come faster than a disk. */
    public static Step asking(State state, Effect effect, int layersAfter) {
        return state.layersAfterAnswer().isPresent() ? to(state) : to(state.awaitingAnswer(layersAfter), effect);
    }
}
