// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.io.IOException;
import sillbook.ui.draw.Frame;
import sillbook.ui.draw.Palette;
import sillbook.ui.draw.Size;

/** Frames on the terminal. */
final class TerminalDisplay implements Display {
    private final TtyTerminal terminal;
    private final FrameWriter writer = new FrameWriter();
    private Size size;

    TerminalDisplay(TtyTerminal terminal, Size size) {
        this.terminal = terminal;
        this.size = size;
    }

    @Override
    public Size size() {
        return size;
    }

    @Override
    public void show(Frame frame, Palette palette) {
        try {
            terminal.send(writer.write(frame, palette));
        } catch (IOException gone) {
            throw new TerminalException("drawing on the terminal", gone);
        }
    }

    @Override
    public void forget() {
        writer.forget();
    }

    @Override
    public void suspend() {
        try {
            terminal.suspend();
        } catch (IOException gone) {
            throw new TerminalException("going to the shell and back", gone);
        }
        size = Stty.currentSize();
        forget();
    }
}
