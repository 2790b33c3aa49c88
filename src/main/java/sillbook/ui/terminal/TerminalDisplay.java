// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.io.IOException;
import java.util.Optional;
import sillbook.ui.draw.Frame;
import sillbook.ui.draw.Palette;
import sillbook.ui.draw.Size;

/** Frames on the terminal. */
final class TerminalDisplay implements Display {
    private final TtyTerminal terminal;
    private Optional<FrameWriter> writer = Optional.empty();
    private Optional<Palette> palette = Optional.empty();
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
    public void show(Frame frame, Palette wanted) {
        try {
            terminal.send(writer(wanted).write(frame));
        } catch (IOException gone) {
            throw new TerminalException("drawing on the terminal", gone);
        }
    }

    @Override
    public void forget() {
        writer.ifPresent(FrameWriter::forget);
    }

    /** Another palette means other paint on every cell, and so begins anew. */
    private FrameWriter writer(Palette wanted) {
        if (!palette.equals(Optional.of(wanted))) {
            palette = Optional.of(wanted);
            writer = Optional.empty();
        }
        FrameWriter current = writer.orElseGet(() -> new FrameWriter(wanted));
        writer = Optional.of(current);
        return current;
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
