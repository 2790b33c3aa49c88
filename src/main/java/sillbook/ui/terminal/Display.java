// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import sillbook.ui.draw.Frame;
import sillbook.ui.draw.Palette;
import sillbook.ui.draw.Size;

/** What frames are shown on. All calls come from the thread of the loop. */
public interface Display {
    Size size();

    void show(Frame frame, Palette palette);

    /** The next frame is drawn whole, whatever is thought to stand there. */
    void forget();

    /** Gives the terminal to the shell that started the program, until it is called back. */
    void suspend();
}
