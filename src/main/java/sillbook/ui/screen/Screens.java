// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import sillbook.ui.draw.Frame;
import sillbook.ui.draw.Size;

/** The loop's two functions. */
public final class Screens {
    private Screens() {}

    /** What comes of a message. */
    public static Step update(State state, Message message) {
        Step step = message.fold(new Update(state));
        return step.then(step.state().top().onTop(step.state()));
    }

    /** What that state looks like in a window of that size. */
    public static Frame view(State state, Size size) {
        return new View(state, size).frame();
    }
}
