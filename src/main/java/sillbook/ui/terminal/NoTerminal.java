// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import sillbook.ui.draw.Frame;
import sillbook.ui.draw.Palette;
import sillbook.ui.draw.Size;

/** Frames are written as for a terminal, and go nowhere. */
final class NoTerminal implements Display {
    private static final Size USUAL = new Size(80, 24);

    private Optional<FrameWriter> writer = Optional.empty();

    /** Has a loop hear what a terminal would send, and draw. */
    static void type(String keys, Loop<?, ?, ?> loop) {
        try {
            new KeyReader(new ByteArrayInputStream(keys.getBytes(StandardCharsets.UTF_8)), loop::hear).readAll();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        loop.turn();
    }

    @Override
    public Size size() {
        return USUAL;
    }

    @Override
    public void show(Frame frame, Palette palette) {
        FrameWriter current = writer.orElseGet(() -> new FrameWriter(palette));
        current.write(frame);
        writer = Optional.of(current);
    }

    @Override
    public void forget() {
        writer.ifPresent(FrameWriter::forget);
    }

    @Override
    public void suspend() {
        throw new IllegalStateException("there is no shell to go to");
    }
}
