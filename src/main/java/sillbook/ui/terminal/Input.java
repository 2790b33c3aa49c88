// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import sillbook.ui.draw.Key;
import sillbook.ui.draw.Size;

/** What comes from the person at the terminal. */
public sealed interface Input {
    /** A key. */
    record Pressed(Key key) implements Input {}

    /** Text put in at once by the terminal; line ends as {@code \n}, whatever else it holds. */
    record Pasted(String text) implements Input {}

    /** The window has another size, or its size is told for the first time. */
    record Resized(Size size) implements Input {}
}
