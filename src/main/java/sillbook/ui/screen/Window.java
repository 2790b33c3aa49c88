// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import sillbook.ui.draw.Alphabet;
import sillbook.ui.draw.Size;

/** The window the screen is shown in. */
public record Window(Size size, Alphabet alphabet) {
    /** The smallest window the pages are drawn for. */
    public static final Size SMALLEST = new Size(80, 24);

    Window withSize(Size other) {
        return new Window(other, alphabet);
    }
}
